package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.Finding;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Controller;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.desk.NowDesk;
import rindward.controller.judge.JournalView;
import rindward.controller.judge.LotJudge;
import rindward.controller.metrics.Scrape;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.settings.Settings.Safety;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.SignInStore;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.copies.StartCheck;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThread;
import rindward.controller.task.TaskThreads;
import rindward.dashboard.Dashboard;
import rindward.dashboard.shed.ShedDesk;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Relay;

/**
 * The whole program wired by hand, in one straight line. Built standing still: {@link #start()}
 * sets it going, a season run calls {@link #step()} instead.
 */
public final class Daemon implements AutoCloseable {
  /** What a command says in its own process is heard so soon; a finding of harm cannot wait. */
  private static final Duration LISTENS = Duration.ofSeconds(1);

  private static final Logger LOG = LoggerFactory.getLogger(Daemon.class);
  private static final Duration CLOCK_INTERVAL = Duration.ofSeconds(5);

  /** Within a minute of the start, and after it: the whole file is read. */
  private static final Cadence DATABASE_CHECK =
      Cadence.once().startingAfter(Duration.ofSeconds(10));

  private final Settings settings;
  private final Time time;
  private final HostMachine host;
  private final @Nullable Relay heartbeat;
  private final @Nullable RecordTime recordTime;
  private final Database database;
  private final Copies copies;
  private final SampleStore store;
  private final CountDownLatch over = new CountDownLatch(1);
  private volatile boolean hasDied;
  private final ShutdownStack ending = new ShutdownStack();
  private final SupervisedTask flushing;
  private final SupervisedTask clockJudging;
  private final SupervisedTask journalReading;
  private final SupervisedTask accuracyNoting;
  private final SupervisedTask databaseReading;
  private final SupervisedTask publishing;
  private final SupervisedTask watchdogFeeding;
  private volatile long readNanos;
  private volatile long readLast = -1;
  private final RoomOrders orders;
  private final ControlLoop loop;
  private final SampleLog samples;
  private final EntryService door;
  private final LotJudge judge;
  private final AlarmWiring watch;
  private final Scrape scrape;
  private final PageWiring pages;
  private final NightlyBackup nightly;
  private final @Nullable CopyElsewhere elsewhere;
  private @Nullable Dashboard dashboard;

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
    this.flushing = tasks.task("flush", Cadence.every(SampleLog.FLUSH_INTERVAL));
    this.clockJudging = tasks.task("clock", Cadence.every(CLOCK_INTERVAL));
    this.journalReading = tasks.task("journal", Cadence.every(LISTENS));
    this.accuracyNoting = tasks.task("accuracies", Cadence.once());
    this.databaseReading = tasks.task("database-check", DATABASE_CHECK);
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
    this.samples = new SampleLog(database);
    Copies copies = new Copies(database, settings.backups(), settings.zone());
    StartCheck.look(database, copies, time.now().at()).ifPresent(this::beginAnew);
    this.database = database;
    this.copies = copies;
    this.nightly = new NightlyBackup(copies, samples, time, tasks);
    this.elsewhere = CopyElsewhere.of(settings, database, copies, samples, time, tasks);
    this.door = new EntryService(new Journal(database), settings.crops());
    this.store = new SampleStore(database, samples);
    this.judge =
        new LotJudge(settings.crops(), settings.hold().toMillis(), store::history, door::journal);
    this.recordTime = host.root() == null ? null : new RecordTime(time, host.root(), samples);
    this.orders = new RoomOrders(settings.rooms(), settings.crops());
    Map<String, List<Probe>> probes = ProbePlaces.byBus(settings, board);
    ProbeReads reads =
        new ProbeReads(
            time,
            ProbePlaces.ofProbes(settings),
            probes,
            isThreaded ? bus -> ending.thread("bus-" + bus) : bus -> Runnable::run,
            tasks);
    this.watch =
        new AlarmWiring(
            settings,
            database,
            samples,
            store,
            judge,
            probes.values().stream().flatMap(List::stream).toList(),
            reads::latest,
            time,
            tasks);
    this.loop =
        new ControlLoop(
            recordTime == null ? time : recordTime,
            controller,
            ProbePlaces.byRoom(settings),
            ProbePlaces.outdoors(settings),
            orders,
            reads,
            new Switchboard(relays),
            samples,
            watch.keeper(),
            tasks.task("alarms", Cadence.whenAsked()));
    this.pages =
        new PageWiring(
            settings,
            database,
            copies,
            door,
            store,
            judge,
            reads::latest,
            loop::latest,
            orders,
            watch,
            this::metrics,
            ending.thread("lot-sums"),
            tasks,
            time);
    this.scrape =
        new Scrape(
            settings.rooms(),
            settings.altitudeM(),
            settings.probes().stream().map(ProbeSetting::name).toList(),
            reads::latest,
            () -> time.now().nanos(),
            loop::latest,
            watch.table(),
            watch::lots,
            watch.ways(),
            settings.store(),
            samples::health,
            tasks);
  }

  /** Returns the one door in. */
  public EntryService door() {
    return door;
  }

  /** Adds what was found wrong at the start, and lasts until the next one. */
  public void tell(Finding found) {
    watch.tell(found);
  }

  /** Lets ticks pass unnoted, or be noted again; see {@link SampleLog#hush}. */
  void hush(boolean hushed) {
    samples.hush(hushed);
  }

  /** Returns what is asked of the rooms, where commands by hand go. */
  public RoomOrders orders() {
    return orders;
  }

  /** Returns what the rooms page shows. */
  public NowDesk desk() {
    return pages.now();
  }

  /** Returns what the shed page shows. */
  ShedDesk shed() {
    return pages.shed();
  }

  /** Returns the shed after the last tick; null before the first. */
  public @Nullable ShedSnapshot latest() {
    return loop.latest();
  }

  /** Returns the meters as a scrape gets them. */
  String metrics() {
    return scrape.text();
  }

  /** Returns the port the dashboard listens on; 0 while there is none. */
  public int port() {
    return dashboard == null ? 0 : dashboard.port();
  }

  /** Does one tick in place. For a season run that moves the time itself. */
  public void step() throws InterruptedException {
    loop.tick();
  }

  /** Puts everything noted so far on the disk; whatever goes wrong, the next flush tries again. */
  public void flush() {
    clockJudging.run(this::judgeClock);
    flushing.run(this::flushSamples);
  }

  /**
   * Sets everything going; the first tick does not wait for the dashboard.
   *
   * @param factor how many times faster than the board's clock the time runs
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   */
  public void start(int factor, Consumer<String> announce) {
    WatchdogFeeder feeder =
        WatchdogFeeder.begin(host, settings, heartbeat, ending.thread("watchdog"), watchdogFeeding);
    ScheduledExecutorService control = ending.thread("control-loop");
    Duration tick = settings.tick().dividedBy(factor);
    new TickScheduler(loop, control, tick, () -> afterTick(feeder), this::die).start();
    startTasks(ending::taskThread);
    try {
      Dashboard open = pages.open(announce);
      ending.add("dashboard", open::close);
      dashboard = open;
    } catch (IllegalStateException e) {
      LOG.error("The rooms are run without a page: {}", e.getMessage());
    }
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

  /** Begins with everything that runs by itself and needs neither page nor broker. */
  void startTasks(TaskThreads threads) {
    TaskThread storing = threads.named("store");
    flushing.start(storing, this::flushSamples, samples::untilNextFlush);
    clockJudging.start(storing, this::judgeClock);
    TaskThread reading = threads.named("journal");
    journalReading.start(reading, this::readNews);
    accuracyNoting.start(reading, this::noteAccuracies);
    watch.start(threads);
    TaskThread copying = threads.named("backup");
    databaseReading.start(copying, this::readDatabase);
    nightly.start(copying);
    if (elsewhere != null) {
      elsewhere.start(threads.named("copy-elsewhere"));
    }
  }

  /** Begins to speak over the broker and to give signs of life, where the settings want it. */
  void publishBy(TaskThreads threads) {
    WordKeys keys = new WordKeys(new SignInStore(database), time);
    watch.publish(ending, threads, loop::latest, keys::of, pages.hand());
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

  private void beginAnew(String sentence) {
    LOG.error("The store is {}", sentence);
    samples.begunAnew(sentence);
  }

  private void judgeClock() {
    if (recordTime != null) {
      recordTime.judge(store);
    }
  }

  private void settle() {
    loop.allOff();
    watch.noteEnd();
    flush();
  }

  /** Tells of the last tick whoever counts or looks. Control loop thread. */
  void publish() {
    publishing.run(this::publishLatest);
  }

  private void publishLatest() {
    ShedSnapshot snapshot = loop.latest();
    if (snapshot != null) {
      scrape.ticked(snapshot);
    }
    Dashboard open = dashboard;
    if (open != null) {
      open.live().publish(pages.now()::now);
    }
  }

  /**
   * Hears what was said, and looks at what lies in the rooms, at disk and batteries, here and now.
   */
  public void hear() {
    journalReading.run(this::readJournal);
    watch.look();
  }

  /** What the settings say of the probes goes into the journal, from now on. */
  void stateAccuracies() {
    accuracyNoting.run(this::noteAccuracies);
  }

  private void flushSamples() {
    samples.flush(time.now().at().toEpochMilli());
  }

  /** Reads the journal when something new was said, and else now and then. */
  private void readNews() {
    boolean isDue = time.now().nanos() - readNanos >= SampleLog.FLUSH_INTERVAL.toNanos();
    if (isDue || door.last() != readLast) {
      readJournal();
    }
  }

  private void readJournal() {
    long now = time.now().nanos();
    JournalView told = judge.told();
    orders.look(told.journal(), told.lots(), time.now().at());
    watch.hear(told.journal());
    NewerEntries.in(told.journal()).findings(settings.rooms()).forEach(watch::tell);
    readNanos = now; // What failed half-way is read again at the next turn.
    readLast = told.last();
  }

  private void readDatabase() {
    samples.found(StartCheck.damage(database, copies).orElse(null));
  }

  private void noteAccuracies() {
    StatedAccuracies.note(settings.rooms(), door, time.now().at());
  }
}
