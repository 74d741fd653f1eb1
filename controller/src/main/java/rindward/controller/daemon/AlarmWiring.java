package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.AlarmWatch;
import rindward.controller.alarm.Finding;
import rindward.controller.diagnosis.LotFactCollector;
import rindward.controller.diagnosis.LotNotes;
import rindward.controller.diagnosis.ShedFactCollector;
import rindward.controller.journal.Recorded;
import rindward.controller.judge.LotNews;
import rindward.controller.link.ChannelState;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThreads;
import rindward.hardware.Probe;

/** The alarms wired by hand: what watches, what remembers, and what is judged beside the ticks. */
final class AlarmWiring {
  private static final Duration BETWEEN_VERDICTS = Duration.ofSeconds(60);
  private static final Duration BETWEEN_LOCK_OUTS = Duration.ofSeconds(1);
  private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(45);

  private final AlarmTable table = AlarmTableReader.builtIn();
  private final Settings settings;
  private final RecordWiring record;
  private final Time time;
  private final LotFactCollector lotPatrol;
  private final OutwardWiring outward;
  private final SupervisedTask judging;
  private final SupervisedTask upkeepLooking;
  private final SupervisedTask lockOutKeeping;
  private final LockOutFile lockOuts;
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
      RecordWiring record,
      List<Probe> probes,
      Function<String, ProbeReading> latestOf,
      Time time,
      HostMachine host,
      TaskSupervisor tasks)
      throws IOException {
    this.settings = settings;
    this.record = record;
    this.time = time;
    this.upkeepLooking = tasks.task("upkeep", Cadence.every(BETWEEN_LOOKS));
    this.lockOutKeeping = tasks.task("lock-out", Cadence.every(BETWEEN_LOCK_OUTS));
    this.lockOuts = new LockOutFile(host.own(settings.store(), ".lockout"));
    this.judging =
        tasks.task(
            "lot-news", Cadence.every(BETWEEN_VERDICTS).startingAfter(Duration.ofSeconds(1)));
    this.lotPatrol = new LotFactCollector(settings.rooms(), settings.crops());
    Instant now = time.now().at();
    Database database = record.database();
    SampleLog samples = record.samples();
    RestoredState past = RestoredState.read(new EventLog(database), record.store(), now);
    this.batteries = new BatteryLevels(probes);
    this.wear = new ContactWear(settings.outputs(), new SwitchingLog(database));
    this.outward = new OutwardWiring(settings, table, past.rota(table, now), time, tasks);
    this.upkeep =
        new Upkeep(
            settings.store(),
            samples,
            past,
            outward::troubles,
            tasks::overdue,
            () -> time.now().at());
    samples.event(now.toEpochMilli(), null, Upkeep.KIND, Upkeep.STARTED);
    this.keeper =
        new AlarmEvaluator(
            patrol(settings),
            new AlarmWatch(table, past.alarms(), past.times(), lockOuts.lockOuts()),
            outward.callout(),
            latestOf,
            this::findings,
            samples,
            settings.safety().heartbeat() != null);
  }

  AlarmEvaluator keeper() {
    return keeper;
  }

  /** Adds what was found wrong at the start, and lasts until the next one. */
  void tell(Finding found) {
    upkeep.tell(found);
  }

  /** Takes in what was said. Reads the disk: not for the control loop. */
  void hear(List<Recorded> journal) {
    keeper.hear(journal);
    lookAtLots();
    wear.look(journal);
  }

  /** Looks at the disk and at the batteries. */
  void look() {
    lockOutKeeping.run(lockOuts::keep);
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

  /** Returns how every way out is doing. */
  List<ChannelState> channels() {
    return outward.channels();
  }

  /**
   * Begins to speak over the broker and to give signs of life, where the settings want it.
   *
   * @param view what control tells
   */
  void publish(ShutdownStack ending, TaskThreads threads, ControlView view) {
    outward.publish(
        ending,
        threads,
        () -> {
          ControlReport report = view.latest();
          return report == null ? null : report.snapshot();
        },
        () -> notes,
        () -> BrokerCommands.listening(settings, record, table, view, time));
  }

  /** Begins to look around, to judge lots and to send, each on a thread of its own. */
  void start(TaskThreads threads) {
    lockOutKeeping.start(threads.named("lock-out"), lockOuts::keep);
    upkeepLooking.start(threads.named("upkeep"), this::lookNow);
    judging.start(threads.named("lots"), this::judgeLots);
    outward.start(threads);
  }

  /** Notes that the program ends because it was told to. */
  void noteEnd() {
    lockOutKeeping.run(lockOuts::keep);
    record.samples().event(time.now().at().toEpochMilli(), null, Upkeep.KIND, Upkeep.STOPPED);
  }

  private void judgeLots() {
    news = LotNews.of(record.judge().judge(time.now().at()));
    lookAtLots();
  }

  /** Where they lie is cheap to say; what they have become is told as it was last judged. */
  private void lookAtLots() {
    note(lotPatrol.look(record.judge().told().lots(), news));
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
