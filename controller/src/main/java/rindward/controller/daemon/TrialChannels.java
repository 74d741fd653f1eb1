package rindward.controller.daemon;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.notice.Channel;
import rindward.controller.notice.Notice;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Settings;
import rindward.hardware.mqtt.Broker;

/** Every channel of the settings, opened beside a running daemon to try them once. */
public final class TrialChannels implements AutoCloseable {
  private final List<Channel> channels;
  private final @Nullable Broker broker;

  private TrialChannels(List<Channel> channels, @Nullable Broker broker) {
    this.channels = channels;
    this.broker = broker;
  }

  /**
   * Opens them.
   *
   * @throws IOException in one sentence, when a secret cannot be read
   */
  public static TrialChannels open(Settings settings) throws IOException {
    @Nullable BrokerPublisher onAir =
        BrokerPublisher.openAs(settings, AlarmTableReader.builtIn(), Time.system(), "trial");
    @Nullable Broker broker = onAir == null ? null : onAir.broker();
    if (broker != null) {
      broker.supervise();
    }
    List<Channel> channels =
        CallWiring.channels(settings.calls(), System::getenv, broker).stream()
            .map(channel -> channel.name().equals("mqtt") ? sentAtOnce(channel, broker) : channel)
            .toList();
    return new TrialChannels(channels, broker);
  }

  /** Returns the channels. */
  public List<Channel> all() {
    return channels;
  }

  @Override
  public void close() {
    if (broker != null) {
      broker.close();
    }
  }

  /** In the daemon a thread sends what is left at the broker; here nobody else does. */
  private static Channel sentAtOnce(Channel channel, @Nullable Broker broker) {
    return new Channel() {
      @Override
      public String name() {
        return channel.name();
      }

      @Override
      public void send(Notice notice) throws IOException {
        channel.send(notice);
        if (broker != null) {
          broker.supervise();
          if (broker.waiting() > 0) {
            throw new IOException(broker.trouble());
          }
        }
      }
    };
  }
}
