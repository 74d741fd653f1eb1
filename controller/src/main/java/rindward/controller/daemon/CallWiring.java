package rindward.controller.daemon;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.notice.Channel;
import rindward.controller.notice.DeliveryQueue;
import rindward.controller.notice.EscalationState;
import rindward.controller.notice.MailChannel;
import rindward.controller.notice.MqttChannel;
import rindward.controller.notice.NoticeText;
import rindward.controller.notice.NotificationDispatcher;
import rindward.controller.notice.WebhookChannel;
import rindward.controller.settings.Calls;
import rindward.controller.settings.Settings;
import rindward.hardware.mqtt.Broker;

/**
 * The channels by which people are told, each worked off by a thread of its own, and the rota as it
 * was when the program last ended.
 */
public final class CallWiring {
  private final NotificationDispatcher callout;

  private CallWiring(NotificationDispatcher callout) {
    this.callout = callout;
  }

  /**
   * Opens the channels of the settings; nothing is sent yet.
   *
   * @param rota who had been told what when the program ended
   * @param broker the connection by which notices go to the broker; null without
   * @throws IOException in one sentence, when a secret cannot be read
   */
  static CallWiring open(
      Settings settings, AlarmTable table, EscalationState rota, @Nullable Broker broker)
      throws IOException {
    Calls how = settings.calls();
    return new CallWiring(
        new NotificationDispatcher(
            table,
            how.line(),
            new NoticeText(table, settings.siteName(), how.alarmsPage()),
            settings.zone(),
            rota,
            channels(how, System::getenv, broker)));
  }

  /**
   * Returns every channel of the settings.
   *
   * @throws IOException in one sentence, when a secret cannot be read
   */
  public static List<Channel> channels(
      Calls how, Function<String, @Nullable String> environment, @Nullable Broker broker)
      throws IOException {
    List<Channel> channels = new ArrayList<>();
    if (how.mail() != null) {
      channels.add(new MailChannel("mail", how.mail().open(environment)));
    }
    if (how.webhook() != null) {
      channels.add(new WebhookChannel("webhook", how.webhook().open(environment)));
    }
    if (broker != null) {
      channels.add(new MqttChannel("mqtt", broker));
    }
    return channels;
  }

  /** Returns what turns alarms into notices. */
  NotificationDispatcher callout() {
    return callout;
  }

  /** Returns what is wrong with each channel, by its name; an empty sentence for none. */
  Map<String, String> troubles() {
    Map<String, String> troubles = new HashMap<>();
    callout.deliveries().forEach((name, delivery) -> troubles.put(name, delivery.trouble()));
    return troubles;
  }

  /** Begins to send. */
  void start(ShutdownStack ending) {
    for (Map.Entry<String, DeliveryQueue> one : callout.deliveries().entrySet()) {
      ScheduledExecutorService worker = ending.thread("notice-" + one.getKey());
      DeliveryQueue delivery = one.getValue();
      var unused =
          worker.scheduleWithFixedDelay(
              () -> delivery.work(System.nanoTime()), 1, 1, TimeUnit.SECONDS);
    }
  }
}
