package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ScheduledExecutorService;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Controller;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.diagnosis.NewerEntries;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.judge.JournalView;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.link.ReportSocket;
import rindward.controller.link.SocketPlace;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.LastingWords;
import rindward.controller.store.StoreException;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThread;
import rindward.controller.task.TaskThreads;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Relay;

/**
 * Control, wired by hand in one straight line: probes, decisions, relays, alarms, calls, the
 * record. It opens no port; what a page needs of it is its {@link #view()}. Built standing still:
 * {@link #start} sets it going, a season run calls {@link #step()} instead.
 */
public final class Daemon implements AutoCloseable {
  /** What is said in another process is heard so soon; a finding of harm cannot wait. */
  private static final Duration LISTENS = Duration.ofSeconds(1);

  private static final Logger LOG = LoggerFactory.getLogger(Daemon.class);

  private final Settings settings;
  private final Time time;
  private final HostMachine host;
  private final TaskSupervisor tasks;
  private final @Nullable Relay heartbeat;
  private final CountDownLatch over = new CountDownLatch(1);
  private volatile boolean hasDied;
  private final ShutdownStack ending = new ShutdownStack();
  private final SupervisedTask journalReading;
  private final SupervisedTask publishing;
  private final SupervisedTask watchdogFeeding;
  private volatile long readNanos;
  private volatile long readLast = -1;
  private volatile Runnable tickSoon = () -> {};
  private volatile Runnable lookSoon = () -> {};
  private final ProbeReads reads;
  private final RoomDemands demands;
  private final ControlLoop loop;
  private final RecordWiring record;
  private final AlarmWiring watch;
  private final KeptMemories kept;
  private final SupervisedTask keeping;
  private final OwnReports reports;

  /**
   * Opens the board and the store; nothing is switched on.
   *
   * @param isThreaded whether each bus has a worker of its own; otherwise reads are done in place
   * @throws IOException when a probe or relay of the settings cannot be opened
   */
  public Daemon(Settings settings, Board board, Time time, boolean isThreaded) throws IOException {
    this(
        settings,
        board,
        time,
        isThreaded,
        HostMachine.none(),
        new RuleBasedController(),
        supervisor(time));
  }

  /**
   * The same on a machine that looks after it.
   *
   * @throws IOException when a probe or relay of the settings cannot be opened
   */
  public Daemon(Settings settings, Board board, Time time, HostMachine host) throws IOException {
    this(settings, board, time, true, host, new RuleBasedController(), supervisor(time));
  }

  /**
   * The same with another way to decide.
   *
   * @throws IOException when a probe or relay of the settings cannot be opened
   */
  public Daemon(
      Settings settings,
      Board board,
      Time time,
      boolean isThreaded,
      HostMachine host,
      Controller controller)
      throws IOException {
    this(settings, board, time, isThreaded, host, controller, supervisor(time));
  }

  /** The same with another supervisor of what runs by itself. */
  Daemon(
      Settings settings,
      Board board,
      Time time,
      boolean isThreaded,
      HostMachine host,
      Controller controller,
      TaskSupervisor tasks)
      throws IOException {
    this.settings = settings;
    this.time = time;
    this.host = host;
    this.tasks = tasks;
    this.journalReading = tasks.task("journal", Cadence.every(LISTENS));
    this.publishing = tasks.task("publish", Cadence.whenAsked());
    this.watchdogFeeding = tasks.task("watchdog", Cadence.whenAsked());
    SupervisedTask boardMinding = tasks.task("board-broker", Cadence.whenAsked());
    board.superviseBy(work -> boardMinding.run(work::run));
    this.heartbeat = settings.safety().heartbeat() == null ? null : board.relay(Safety.HEARTBEAT);
    ending.add("board", board::close);
    Map<String, Relay> relays = new LinkedHashMap<>();
    for (OutputSetting output : settings.outputs()) {
      relays.put(output.name(), board.relay(output.name()));
    }
    Database database = new Database(settings.store());
    ending.add("database", database::close);
    ending.add("last ticks", this::settle);
    this.record = new RecordWiring(settings, database, time, host, tasks);
    this.demands = new RoomDemands(settings.rooms(), settings.crops(), record.authority());
    goBy(LastingWords.unkept());
    Map<String, List<Probe>> probes = ProbePlaces.byBus(settings, board);
    this.reads =
        new ProbeReads(
            time,
            ProbePlaces.ofProbes(settings),
            probes,
            isThreaded ? bus -> ending.thread("bus-" + bus) : bus -> Runnable::run,
            tasks);
    this.watch =
        new AlarmWiring(
            settings,
            record,
            probes.values().stream().flatMap(List::stream).toList(),
            reads::latest,
            time,
            host,
            tasks);
    this.kept = KeptMemories.of(settings);
    this.keeping = tasks.task("estimate", Cadence.every(KeptMemories.EVERY));
    record.judgeClock(); // How old what was kept is, depends on it.
    this.loop =
        new ControlLoop(
            record.time(),
            controller,
            ProbePlaces.byRoom(settings),
            ProbePlaces.outdoors(settings),
            demands,
            reads,
            new RelayDriver(relays),
            record.samples(),
            watch.keeper(),
            tasks.task("alarms", Cadence.whenAsked()),
            kept);
    this.reports = new OwnReports(this::report, this::hearNow);
  }

  /** Returns the one door in. */
  public EntryService door() {
    return record.door();
  }

  /** Returns all that a page has of control. */
  public ControlView view() {
    return reports;
  }

  /** Adds what was found wrong at the start, and lasts until the next one. */
  public void tell(Finding found) {
    watch.tell(found);
  }

  /** Lets ticks pass unnoted, or be noted again; see {@link SampleLog#hush}. */
  void hush(boolean hushed) {
    record.samples().hush(hushed);
  }

  /** Returns what is asked of the rooms. */
  public RoomDemands demands() {
    return demands;
  }

  /** Returns the shed after the last tick; null before the first. */
  public @Nullable ShedSnapshot latest() {
    return loop.latest();
  }

  /** Does one tick in place. For a season run that moves the time itself. */
  public void step() throws InterruptedException {
    loop.tick();
  }

  /** Puts everything noted so far on the disk; whatever goes wrong, the next flush tries again. */
  public void flush() {
    record.flush();
  }

  /**
   * Sets everything going, the ticks first.
   *
   * @param factor how many times faster than the board's clock the time runs
   */
  public void start(int factor) {
    WatchdogFeeder feeder =
        WatchdogFeeder.begin(host, settings, heartbeat, ending.thread("watchdog"), watchdogFeeding);
    ScheduledExecutorService control = ending.thread("control-loop");
    Duration tick = settings.tick().dividedBy(factor);
    TickScheduler beat = new TickScheduler(loop, control, tick, () -> afterTick(feeder), this::die);
    beat.start();
    tickSoon = beat::soon;
    startTasks(ending::taskThread);
    publishBy(ending::taskThread);
    // The newest part ends first: whatever else hangs, the outputs are off by then.
    ending.add("watchdog", () -> feeder.close(!hasDied));
    ending.add(
        "outputs",
        () -> {
          ending.stop("control-loop", control);
          loop.allOff();
        });
  }

  /**
   * Begins to tell each tick to pages of other processes, and to hear from them that something was
   * said; after {@link #start}.
   */
  public void listen() {
    ReportSocket socket =
        new ReportSocket(
            SocketPlace.of(settings.store()), () -> lookSoon.run(), () -> time.now().nanos());
    ending.add("socket of pages", socket::close);
    reports.eachReport(socket::tell);
    tasks
        .task("page-link", Cadence.every(Duration.ofMillis(1)))
        .start(ending.taskThread("page-link"), socket::turn);
  }

  /** Begins with everything that runs by itself and needs no broker. */
  void startTasks(TaskThreads threads) {
    record.start(threads);
    TaskThread reading = threads.named("journal");
    journalReading.start(reading, this::readNews);
    lookSoon = () -> reading.after(Duration.ZERO, () -> journalReading.run(this::readNews));
    record.startStating(reading);
    keeping.start(threads.named("estimate"), kept::keep);
    watch.start(threads);
  }

  /** Begins to speak over the broker and to give signs of life, where the settings want it. */
  void publishBy(TaskThreads threads) {
    watch.publish(ending, threads, reports);
  }

  /**
   * Waits until the daemon is closed, or its control has died and switched everything off.
   *
   * @return whether it was closed
   */
  public boolean awaitEnd() throws InterruptedException {
    over.await();
    return !hasDied;
  }

  /** Switches everything off, keeps what was noted, and lets go. Safe to call twice. */
  @Override
  public void close() {
    ending.close();
    over.countDown();
  }

  private void die() {
    hasDied = true;
    over.countDown();
  }

  private void afterTick(WatchdogFeeder feeder) {
    feeder.afterTick(loop.latest());
    publish();
  }

  private static TaskSupervisor supervisor(Time time) {
    return new TaskSupervisor(() -> time.now().at(), System::nanoTime);
  }

  private void settle() {
    loop.allOff();
    watch.noteEnd();
    keeping.run(kept::keep);
    flush();
  }

  /** Tells of the last tick whoever listens. Control loop thread. */
  void publish() {
    publishing.run(reports::tell);
  }

  private @Nullable ControlReport report() {
    ShedSnapshot snapshot = loop.latest();
    if (snapshot == null) {
      return null;
    }
    Tick now = time.now();
    return new ControlReport(
        now,
        demands.heard(),
        snapshot,
        settings.probes().stream().map(ProbeSetting::name).map(reads::latest).toList(),
        watch.keeper().accepted(),
        record.samples().health(),
        record.samples().rewrites(),
        watch.channels(),
        tasks.states());
  }

  /**
   * Hears what was said, and looks at what lies in the rooms, at disk and batteries, here and now.
   */
  public void hear() {
    hearNow();
    watch.look();
  }

  /** What the settings say of the probes goes into the journal, from now on. */
  void stateAccuracies() {
    record.stateAccuracies();
  }

  private void hearNow() {
    journalReading.run(this::readJournal);
  }

  /**
   * What was switched off by hand stays off from the first tick on, also when the journal cannot be
   * read. Before {@link #start}.
   *
   * @param lasting what lasts whatever becomes of the journal
   */
  public void goBy(LastingWords lasting) {
    List<Recorded> ofHands = List.of();
    try {
      ofHands =
          record
              .door()
              .about(
                  settings.rooms().stream()
                      .map(Room::name)
                      .map(SwitchedByHand::subjectOf)
                      .toList());
    } catch (StoreException e) {
      LOG.error(
          "What was switched by hand is known only from beside the settings: {}", e.getMessage());
    }
    demands.begin(ofHands, lasting, time.now().at());
  }

  /** Reads the journal when something new was said, and else now and then. */
  private void readNews() {
    boolean isDue = time.now().nanos() - readNanos >= SampleLog.FLUSH_INTERVAL.toNanos();
    if (isDue || door().last() != readLast) {
      readJournal();
    }
  }

  private void readJournal() {
    long now = time.now().nanos();
    long last = record.current().last();
    JournalView told = record.judge().told();
    boolean isSwitched =
        demands.look(told.journal(), told.lots(), record.current().places(), last, time.now().at());
    record.current().settle(told.journal(), told.lots());
    watch.hear(told.journal());
    NewerEntries.in(told.journal()).findings(settings.rooms()).forEach(watch::tell);
    readNanos = now; // What failed half-way is read again at the next turn.
    readLast = last;
    if (isSwitched) {
      tickSoon.run();
    }
  }
}
