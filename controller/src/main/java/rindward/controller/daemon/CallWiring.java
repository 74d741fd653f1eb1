package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThreads;
import rindward.hardware.mqtt.Broker;

/**
 * The channels by which people are told, each worked off by a thread of its own, and the rota as it
 * was when the program last ended.
 */
public final class CallWiring {
  private static final String TASK_PREFIX = "notice-";
  private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(1);

  private final NotificationDispatcher callout;
  private final Map<String, SupervisedTask> sending = new LinkedHashMap<>();

  private CallWiring(NotificationDispatcher callout, TaskSupervisor tasks) {
    this.callout = callout;
    callout
        .deliveries()
        .keySet()
        .forEach(
            name ->
                sending.put(
                    name,
                    tasks.task(
                        TASK_PREFIX + name,
                        Cadence.every(BETWEEN_LOOKS).startingAfter(BETWEEN_LOOKS))));
  }

  /**
   * Opens the channels of the settings; nothing is sent yet.
   *
   * @param rota who had been told what when the program ended
   * @param broker the connection by which notices go to the broker; null without
   * @throws IOException in one sentence, when a secret cannot be read
   */
  static CallWiring open(
      Settings settings,
      AlarmTable table,
      EscalationState rota,
      @Nullable Broker broker,
      TaskSupervisor tasks)
      throws IOException {
    Calls how = settings.calls();
    return new CallWiring(
        new NotificationDispatcher(
            table,
            how.line(),
            new NoticeText(table, settings.siteName(), how.alarmsPage()),
            settings.zone(),
            rota,
            channels(how, System::getenv, broker)),
        tasks);
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

  /** Begins to send, each channel on a thread of its own. */
  void start(TaskThreads threads) {
    Map<String, DeliveryQueue> deliveries = callout.deliveries();
    sending.forEach(
        (name, task) -> {
          DeliveryQueue delivery = deliveries.get(name);
          if (delivery != null) {
            task.start(threads.named(TASK_PREFIX + name), () -> delivery.work(System.nanoTime()));
          }
        });
  }
}
