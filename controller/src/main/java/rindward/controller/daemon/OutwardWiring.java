package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.broadcast.Intake;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.link.ChannelState;
import rindward.controller.notice.EscalationState;
import rindward.controller.notice.NotificationDispatcher;
import rindward.controller.settings.Settings;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThreads;
import rindward.hardware.mqtt.Broker;

/**
 * Every way by which the shed reaches somebody, wired by hand: the channels that call people, the
 * broker, and signs of life.
 */
final class OutwardWiring {
  private static final Duration BETWEEN_MESSAGES = Duration.ofSeconds(1);
  private static final String BROKER = "broker";
  private static final String ALIVE = "alive";

  private final CallWiring calling;
  private final @Nullable BrokerPublisher onAir;
  private final @Nullable SupervisedTask broadcasting;
  private final @Nullable LivenessSender life;

  /**
   * @param rota who had been told what when the program ended
   * @param tasks supervises what runs by itself
   * @throws IOException in one sentence, when a channel's secret cannot be read
   */
  OutwardWiring(
      Settings settings, AlarmTable table, EscalationState rota, Time time, TaskSupervisor tasks)
      throws IOException {
    this.onAir = BrokerPublisher.open(settings, table, time);
    this.calling =
        CallWiring.open(settings, table, rota, onAir == null ? null : onAir.broker(), tasks);
    this.broadcasting =
        onAir == null ? null : tasks.task("broadcast", Cadence.every(BETWEEN_MESSAGES));
    this.life = LivenessSender.open(settings.calls(), time, tasks);
  }

  /** Who signs with which token, and what does as they say. */
  record Listening(Function<String, Optional<Intake.Signer>> signerOf, Intake.Hand hand) {}

  /** Returns what turns alarms into notices. */
  NotificationDispatcher callout() {
    return calling.callout();
  }

  /** Returns what is wrong with each way out, by its name; an empty sentence for none. */
  Map<String, String> troubles() {
    Map<String, String> all = new HashMap<>(calling.troubles());
    if (onAir != null) {
      all.put(BROKER, onAir.broker().trouble());
    }
    if (life != null) {
      all.put(ALIVE, life.trouble());
    }
    return all;
  }

  /** Returns how every way out is doing. */
  List<ChannelState> channels() {
    List<ChannelState> states = new ArrayList<>();
    calling
        .callout()
        .deliveries()
        .forEach(
            (name, delivery) ->
                states.add(new ChannelState(name, delivery.trouble(), delivery.waiting())));
    if (onAir != null) {
      Broker broker = onAir.broker();
      states.add(new ChannelState(BROKER, broker.trouble(), broker.waiting()));
    }
    if (life != null) {
      states.add(new ChannelState(ALIVE, life.trouble(), 0));
    }
    return states;
  }

  /** Begins to call people, each channel on a thread of its own. */
  void start(TaskThreads threads) {
    calling.start(threads);
  }

  /**
   * Begins to speak over the broker and to give signs of life, where the settings want it.
   *
   * @param listening asked for only where there is a broker
   */
  void publish(
      ShutdownStack ending,
      TaskThreads threads,
      Supplier<@Nullable ShedSnapshot> latest,
      Supplier<LotNotes> lots,
      Supplier<Listening> listening) {
    if (onAir != null && broadcasting != null) {
      ending.add("broker of the shed", onAir.broker()::close);
      Listening to = listening.get();
      onAir.start(broadcasting, threads.named("broadcast"), latest, lots, to.signerOf(), to.hand());
    }
    if (life != null) {
      life.start(threads, latest);
    }
  }
}
