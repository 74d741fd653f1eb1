package rindward.controller.daemon;

import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.broadcast.Broadcast;
import rindward.controller.broadcast.Intake;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskThread;
import rindward.hardware.mqtt.Broker;
import rindward.hardware.mqtt.BrokerSettings;
import rindward.hardware.mqtt.Incoming;

/**
 * The farm's own connection to the broker, apart from that of probes and relays: a flood of readers
 * must never hold up a relay. One thread of its own looks after it, publishes and takes words.
 */
final class BrokerPublisher {
  private static final String SAY = "say";

  /** So that somebody who says too much keeps nobody else from hearing. */
  private static final int MOST_WORDS_A_TURN = 20;

  private static final long REPLY_VALID_NANOS = 30_000_000_000L;

  private final Broker broker;
  private final Broadcast broadcast;
  private final boolean takesCommands;
  private final Time time;
  private long published;

  private BrokerPublisher(Broker broker, Broadcast broadcast, boolean takesCommands, Time time) {
    this.broker = broker;
    this.broadcast = broadcast;
    this.takesCommands = takesCommands;
    this.time = time;
  }

  /**
   * Prepares the connection; null where the settings want none.
   *
   * @throws IOException in one sentence, when the broker's password cannot be read
   */
  static @Nullable BrokerPublisher open(Settings settings, AlarmTable table, Time time)
      throws IOException {
    return openAs(settings, table, time, "shed");
  }

  /** The same under another name, beside a running daemon. */
  static @Nullable BrokerPublisher openAs(
      Settings settings, AlarmTable table, Time time, String name) throws IOException {
    BrokerSetting setting = settings.broker();
    if (setting == null || !settings.calls().publishes()) {
      return null;
    }
    BrokerSettings how =
        new BrokerSettings(
            setting.uri(),
            "rindward-" + setting.site() + "-" + name,
            setting.user(),
            RealBoard.password(setting.passwordFile()),
            "rindward/" + setting.site() + "/" + name,
            setting.authority());
    Broker broker = new Broker(how, System::nanoTime);
    boolean takes = settings.calls().takesCommands();
    if (takes) {
      broker.listenToEach(broker.topic(SAY));
    }
    return new BrokerPublisher(broker, new Broadcast(table), takes, time);
  }

  Broker broker() {
    return broker;
  }

  /**
   * Begins to publish and, where the settings allow it, to take words.
   *
   * @param task supervises the turns that are taken on {@code thread}
   * @param signerOf returns who signs with the API token of a public name
   */
  void start(
      SupervisedTask task,
      TaskThread thread,
      Supplier<@Nullable ShedSnapshot> latest,
      Supplier<LotNotes> lots,
      Function<String, Optional<Intake.Signer>> signerOf,
      Intake.Hand hand) {
    Intake intake = new Intake(signerOf, hand, time.now().at());
    task.start(thread, () -> turn(latest, lots, intake));
  }

  private void turn(
      Supplier<@Nullable ShedSnapshot> latest, Supplier<LotNotes> lots, Intake intake) {
    ShedSnapshot snapshot = latest.get();
    if (snapshot != null && snapshot.tick() != published) {
      published = snapshot.tick();
      broadcast.publish(
          snapshot, lots.get(), (topic, text) -> broker.state(broker.topic(topic), text));
    }
    broker.supervise();
    if (takesCommands) {
      takeWords(intake);
    }
  }

  private void takeWords(Intake intake) {
    Instant now = time.now().at();
    for (int i = 0; i < MOST_WORDS_A_TURN; i++) {
      Incoming word = broker.next(broker.topic(SAY));
      if (word == null) {
        return;
      }
      Intake.Reply reply = intake.take(word.text(), word.isRetained(), now);
      broker.command(
          broker.topic("said" + (reply.request().isEmpty() ? "" : "/" + reply.request())),
          reply.text(),
          REPLY_VALID_NANOS);
    }
  }
}
