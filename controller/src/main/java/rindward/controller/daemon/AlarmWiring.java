package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.AlarmWatch;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.broadcast.Intake;
import rindward.controller.diagnosis.LotFactCollector;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.diagnosis.ShedFactCollector;
import rindward.controller.journal.Recorded;
import rindward.controller.judge.LotJudge;
import rindward.controller.judge.LotNews;
import rindward.controller.metrics.DeliveryChannel;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThreads;
import rindward.hardware.Probe;
import rindward.hardware.mqtt.Broker;

/** The alarms wired by hand: what watches, what remembers, and who is called. */
final class AlarmWiring {
  private static final Duration BETWEEN_VERDICTS = Duration.ofSeconds(60);
  private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(45);
  private static final Duration BETWEEN_MESSAGES = Duration.ofSeconds(1);

  private final AlarmTable table = AlarmTableReader.builtIn();
  private final Time time;
  private final SampleLog samples;
  private final LotJudge judge;
  private final LotFactCollector lotPatrol;
  private final CallWiring calling;
  private final @Nullable BrokerPublisher onAir;
  private final @Nullable SupervisedTask broadcasting;
  private final @Nullable LivenessSender life;
  private final SupervisedTask judging;
  private final SupervisedTask upkeepLooking;
  private final Upkeep upkeep;
  private final BatteryLevels batteries;
  private final ContactWear wear;
  private final AlarmEvaluator keeper;
  private volatile LotNews news = LotNews.NONE;
  private volatile LotNotes notes = LotNotes.NONE;

  /**
   * @param probes every probe that was opened
   * @param latestOf the latest of a probe
   * @param tasks supervises what runs by itself
   * @throws IOException in one sentence, when a channel's secret cannot be read
   */
  AlarmWiring(
      Settings settings,
      Database database,
      SampleLog samples,
      SampleStore store,
      LotJudge judge,
      List<Probe> probes,
      Function<String, ProbeReading> latestOf,
      Time time,
      TaskSupervisor tasks)
      throws IOException {
    this.time = time;
    this.upkeepLooking = tasks.task("upkeep", Cadence.every(BETWEEN_LOOKS));
    this.judging =
        tasks.task(
            "lot-news", Cadence.every(BETWEEN_VERDICTS).startingAfter(Duration.ofSeconds(1)));
    this.samples = samples;
    this.judge = judge;
    this.lotPatrol = new LotFactCollector(settings.rooms(), settings.crops());
    Instant now = time.now().at();
    RestoredState past = RestoredState.read(new EventLog(database), store, now);
    this.batteries = new BatteryLevels(probes);
    this.wear = new ContactWear(settings.outputs(), new SwitchingLog(database));
    this.onAir = BrokerPublisher.open(settings, table, time);
    this.calling =
        CallWiring.open(
            settings, table, past.rota(table, now), onAir == null ? null : onAir.broker(), tasks);
    this.broadcasting =
        onAir == null ? null : tasks.task("broadcast", Cadence.every(BETWEEN_MESSAGES));
    this.life = LivenessSender.open(settings.calls(), time, tasks);
    this.upkeep =
        new Upkeep(
            settings.store(), samples, past, this::troubles, tasks::overdue, () -> time.now().at());
    samples.event(now.toEpochMilli(), null, Upkeep.KIND, Upkeep.STARTED);
    this.keeper =
        new AlarmEvaluator(
            patrol(settings),
            new AlarmWatch(table, past.alarms(), past.times()),
            calling.callout(),
            latestOf,
            this::findings,
            samples,
            settings.safety().heartbeat() != null);
  }

  AlarmTable table() {
    return table;
  }

  AlarmEvaluator keeper() {
    return keeper;
  }

  CallWiring calling() {
    return calling;
  }

  /** Adds what was found wrong at the start, and lasts until the next one. */
  void tell(Finding found) {
    upkeep.tell(found);
  }

  /** Returns what is known of the lots. */
  LotNotes lots() {
    return notes;
  }

  /** Takes in what was said. Reads the disk: not for the control loop. */
  void hear(List<Recorded> journal) {
    keeper.hear(journal);
    lookAtLots();
    wear.look(journal);
  }

  /** Looks at the disk and at the batteries. */
  void look() {
    upkeepLooking.run(this::lookNow);
  }

  private void lookNow() {
    upkeep.look();
    batteries.look();
  }

  private Set<Finding> findings() {
    Set<Finding> all = upkeep.findings();
    all.addAll(batteries.findings());
    all.addAll(wear.findings());
    return all;
  }

  /** Returns what is wrong with each way out, by its name; an empty sentence for none. */
  Map<String, String> troubles() {
    Map<String, String> all = new HashMap<>(calling.troubles());
    if (onAir != null) {
      all.put("broker", onAir.broker().trouble());
    }
    if (life != null) {
      all.put("alive", life.trouble());
    }
    return all;
  }

  /** Returns every way by which the shed reaches somebody, to be counted. */
  List<DeliveryChannel> ways() {
    List<DeliveryChannel> ways = new ArrayList<>();
    calling
        .callout()
        .deliveries()
        .forEach(
            (name, delivery) ->
                ways.add(new DeliveryChannel(name, delivery::trouble, delivery::waiting)));
    if (onAir != null) {
      Broker broker = onAir.broker();
      ways.add(new DeliveryChannel("broker", broker::trouble, broker::waiting));
    }
    if (life != null) {
      ways.add(new DeliveryChannel("alive", life::trouble, () -> 0));
    }
    return ways;
  }

  /** Begins to publish, where the settings want it. */
  void publish(
      ShutdownStack ending,
      TaskThreads threads,
      Supplier<@Nullable ShedSnapshot> latest,
      Function<String, Optional<Intake.Signer>> signerOf,
      Intake.Hand hand) {
    if (onAir != null && broadcasting != null) {
      ending.add("broker of the shed", onAir.broker()::close);
      onAir.start(broadcasting, threads.named("broadcast"), latest, this::lots, signerOf, hand);
    }
    if (life != null) {
      life.start(threads, latest);
    }
  }

  /** Begins to look around, to judge lots and to send, each on a thread of its own. */
  void start(TaskThreads threads) {
    upkeepLooking.start(threads.named("upkeep"), this::lookNow);
    judging.start(threads.named("lots"), this::judgeLots);
    calling.start(threads);
  }

  /** Notes that the program ends because it was told to. */
  void noteEnd() {
    samples.event(time.now().at().toEpochMilli(), null, Upkeep.KIND, Upkeep.STOPPED);
  }

  private void judgeLots() {
    news = LotNews.of(judge.judge(time.now().at()));
    lookAtLots();
  }

  /** Where they lie is cheap to say; what they have become is told as it was last judged. */
  private void lookAtLots() {
    note(lotPatrol.look(judge.told().lots(), news));
  }

  private void note(LotNotes next) {
    notes = next;
    keeper.note(next);
  }

  private static ShedFactCollector patrol(Settings settings) {
    Map<String, List<String>> probes = new LinkedHashMap<>();
    settings
        .rooms()
        .forEach(
            room ->
                probes.put(
                    room.name(),
                    settings.probes().stream()
                        .filter(p -> p.room().equals(room.name()))
                        .map(ProbeSetting::name)
                        .toList()));
    return new ShedFactCollector(
        settings.rooms(),
        probes,
        settings.probes().stream()
            .filter(p -> p.place() == ProbePlace.OUTDOOR)
            .map(ProbeSetting::name)
            .toList(),
        settings.altitudeM(),
        settings.zone());
  }
}
