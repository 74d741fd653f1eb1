package rindward.controller.daemon;

import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.judge.LotJudge;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.SignInStore;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.copies.StartCheck;
import rindward.controller.store.current.CurrentJournal;
import rindward.controller.store.current.FinishedLots;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThread;
import rindward.controller.task.TaskThreads;

/** The record wired by hand: what is kept, what keeps it, and what sees to it that it is whole. */
final class RecordWiring {
  private static final Logger LOG = LoggerFactory.getLogger(RecordWiring.class);
  private static final Duration CLOCK_INTERVAL = Duration.ofSeconds(5);

  /** Within a minute of the start, and after it: the whole file is read. */
  private static final Cadence DATABASE_CHECK =
      Cadence.once().startingAfter(Duration.ofSeconds(10));

  private final Settings settings;
  private final Time time;
  private final Database database;
  private final Copies copies;
  private final SampleLog samples;
  private final SampleStore store;
  private final EntryService door;
  private final CurrentJournal current;
  private final LotJudge judge;
  private final EntryAuthority authority;
  private final NightlyBackup nightly;
  private final @Nullable CopyElsewhere elsewhere;
  private final @Nullable RecordTime recordTime;
  private final SupervisedTask flushing;
  private final SupervisedTask clockJudging;
  private final SupervisedTask accuracyNoting;
  private final SupervisedTask databaseReading;

  /** Opens the record; one that is damaged is begun anew. */
  RecordWiring(
      Settings settings, Database database, Time time, HostMachine host, TaskSupervisor tasks) {
    this.settings = settings;
    this.time = time;
    this.database = database;
    this.flushing = tasks.task("flush", Cadence.every(SampleLog.FLUSH_INTERVAL));
    this.clockJudging = tasks.task("clock", Cadence.every(CLOCK_INTERVAL));
    this.accuracyNoting = tasks.task("accuracies", Cadence.once());
    this.databaseReading = tasks.task("database-check", DATABASE_CHECK);
    this.samples = new SampleLog(database);
    this.copies = new Copies(database, settings.backups(), settings.zone());
    StartCheck.look(database, copies, time.now().at()).ifPresent(this::beginAnew);
    this.nightly = new NightlyBackup(copies, samples, time, tasks);
    this.elsewhere = CopyElsewhere.of(settings, database, copies, samples, time, tasks);
    this.door = new EntryService(new Journal(database), settings.crops());
    this.store = new SampleStore(database, samples);
    this.current = new CurrentJournal(database, settings.crops(), BuildVersion.told());
    long holdMillis = settings.hold().toMillis();
    this.judge =
        new LotJudge(
            settings.crops(),
            holdMillis,
            store::history,
            current::entries,
            new FinishedLots(
                database,
                settings.crops(),
                holdMillis,
                store::history,
                current,
                () -> time.now().at()));
    this.authority = new EntryAuthority(new SignInStore(database), () -> time.now().nanos());
    this.recordTime = host.root() == null ? null : new RecordTime(time, host.root(), samples);
  }

  Database database() {
    return database;
  }

  SampleLog samples() {
    return samples;
  }

  SampleStore store() {
    return store;
  }

  EntryService door() {
    return door;
  }

  /** Returns what is not over of all that was said. */
  CurrentJournal current() {
    return current;
  }

  /** Returns who judges the lots that are not over. */
  LotJudge judge() {
    return judge;
  }

  /** Returns who may say what. */
  EntryAuthority authority() {
    return authority;
  }

  /** Returns the time by which the record is dated. */
  Time time() {
    return recordTime == null ? time : recordTime;
  }

  /** Begins to keep what is noted, and to look after what is kept. */
  void start(TaskThreads threads) {
    TaskThread storing = threads.named("store");
    flushing.start(storing, this::flushSamples, samples::untilNextFlush);
    clockJudging.start(storing, this::judgeClock);
    TaskThread copying = threads.named("backup");
    databaseReading.start(copying, this::readDatabase);
    nightly.start(copying);
    if (elsewhere != null) {
      elsewhere.start(threads.named("copy-elsewhere"));
    }
  }

  /** Puts everything noted so far on the disk; whatever goes wrong, the next flush tries again. */
  void flush() {
    clockJudging.run(this::judgeClock);
    flushing.run(this::flushSamples);
  }

  /** Begins to note what the settings say of the probes, once. */
  void startStating(TaskThread thread) {
    accuracyNoting.start(thread, this::noteAccuracies);
  }

  /** What the settings say of the probes goes into the journal, from now on. */
  void stateAccuracies() {
    accuracyNoting.run(this::noteAccuracies);
  }

  private void beginAnew(String sentence) {
    LOG.error("The store is {}", sentence);
    samples.begunAnew(sentence);
  }

  /** Judges the clock while it is not believed. */
  void judgeClock() {
    if (recordTime != null) {
      recordTime.judge(store);
    }
  }

  private void flushSamples() {
    samples.flush(time.now().at().toEpochMilli());
  }

  private void readDatabase() {
    samples.found(StartCheck.damage(database, copies).orElse(null));
  }

  private void noteAccuracies() {
    StatedAccuracies.note(settings.rooms(), door, time.now().at());
  }
}
