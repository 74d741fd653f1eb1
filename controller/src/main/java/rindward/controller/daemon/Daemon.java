package rindward.controller.daemon;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.control.Control;
import rindward.controller.control.Controller;
import rindward.controller.daemon.ControlLoop.Watched;
import rindward.controller.desk.LotAccounts;
import rindward.controller.desk.NowDesk;
import rindward.controller.lot.Recorded;
import rindward.controller.metrics.Scrape;
import rindward.controller.room.ProbePlace;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.snapshot.Snapshot;
import rindward.controller.store.Database;
import rindward.controller.store.Door;
import rindward.controller.store.Journal;
import rindward.controller.store.SampleLog;
import rindward.controller.store.SampleStore;
import rindward.controller.store.StoreException;
import rindward.dashboard.Dashboard;
import rindward.hardware.Board;
import rindward.hardware.Probe;
import rindward.hardware.Relay;

/**
 * The whole program wired by hand, in one straight line. Built standing still: {@link #start()}
 * sets it going, a season run calls {@link #step()} instead.
 */
public final class Daemon implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Daemon.class);

  private final Settings settings;
  private final Time time;
  private final Ending ending = new Ending();
  private final RoomOrders orders;
  private final ControlLoop loop;
  private final SampleLog samples;
  private final Door door;
  private final LotAccounts accounts;
  private final Watch watch;
  private final Pages pages;
  private @Nullable Dashboard dashboard;

  /**
   * Opens the board and the store; nothing is switched on.
   *
   * @param isThreaded whether each bus has a worker of its own; otherwise reads are done in place
   * @throws IOException when a probe or relay of the settings cannot be opened
   */
  public Daemon(Settings settings, Board board, Time time, boolean isThreaded) throws IOException {
    this(settings, board, time, isThreaded, new Control());
  }

  /** The same with another way to decide. */
  Daemon(Settings settings, Board board, Time time, boolean isThreaded, Controller controller)
      throws IOException {
    this.settings = settings;
    this.time = time;
    ending.add("board", board::close);
    Map<String, List<Probe>> probesByBus = new LinkedHashMap<>();
    for (ProbeSetting probe : settings.probes()) {
      probesByBus
          .computeIfAbsent(probe.driver().bus(), bus -> new ArrayList<>())
          .add(board.probe(probe.name()));
    }
    Map<String, Relay> relays = new LinkedHashMap<>();
    for (OutputSetting output : settings.outputs()) {
      relays.put(output.name(), board.relay(output.name()));
    }
    Database database = new Database(settings.store());
    ending.add("database", database::close);
    ending.add("last ticks", this::settle);
    this.samples = new SampleLog(database);
    this.door = new Door(new Journal(database), settings.crops().keys());
    SampleStore store = new SampleStore(database, samples);
    this.accounts = new LotAccounts(store::history, settings.hold());
    this.orders = new RoomOrders(settings.rooms(), settings.crops());
    ProbeReads reads =
        new ProbeReads(
            time,
            settings.probes().stream()
                .collect(Collectors.toMap(ProbeSetting::name, ProbeSetting::place)),
            probesByBus,
            isThreaded ? bus -> ending.thread("bus-" + bus) : bus -> Runnable::run);
    this.watch = new Watch(settings, database, samples, store, reads::latest, time);
    this.loop =
        new ControlLoop(
            time,
            controller,
            watched(settings),
            outdoorProbes(settings),
            orders,
            reads,
            new Switchboard(relays),
            samples,
            watch.keeper());
    Scrape scrape = new Scrape(settings.rooms(), loop::latest);
    this.pages =
        new Pages(
            settings,
            database,
            door,
            accounts,
            store,
            reads::latest,
            loop::latest,
            orders,
            watch,
            scrape::text,
            time);
  }

  /** Returns the one door in. */
  public Door door() {
    return door;
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

  /** Returns the shed after the last tick; null before the first. */
  public @Nullable Snapshot latest() {
    return loop.latest();
  }

  /** Returns the port the dashboard listens on; 0 while there is none. */
  public int port() {
    return dashboard == null ? 0 : dashboard.port();
  }

  /** Does one tick in place. For a season run that moves the time itself. */
  public void step() throws InterruptedException {
    loop.tick();
  }

  /**
   * Puts everything noted so far on the disk, and looks at the journal for what lies in the rooms;
   * whatever goes wrong, the next flush tries again.
   */
  public void flush() {
    lookAtStock();
    try {
      samples.flush(time.now().at().toEpochMilli());
    } catch (RuntimeException e) {
      LOG.error("What was noted could not be put on the disk", e);
    }
  }

  /**
   * Sets everything going; the first tick does not wait for the dashboard.
   *
   * @param factor how many times faster than the board's clock the time runs
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   */
  public void start(int factor, Consumer<String> announce) {
    new Beat(loop, ending.thread("control-loop"), settings.tick().dividedBy(factor), this::publish)
        .start();
    ScheduledExecutorService storing = ending.thread("store");
    storing.execute(this::lookAtStock);
    storing.execute(this::stateAccuracies);
    watch.start(ending, door);
    long flushMillis = SampleLog.FLUSH_INTERVAL.toMillis();
    var unused =
        storing.scheduleWithFixedDelay(
            this::flush, flushMillis, flushMillis, TimeUnit.MILLISECONDS);
    try {
      Dashboard open = pages.open(announce);
      ending.add("dashboard", open::close);
      dashboard = open;
      watch.publish(ending, loop::latest, open::workerOf, pages.hand());
    } catch (IllegalStateException e) {
      LOG.error("The rooms are run without a page: {}", e.getMessage());
      // Without a page nobody can be known, so nobody's word is taken.
      watch.publish(ending, loop::latest, token -> Optional.empty(), pages.hand());
    }
  }

  /** Switches everything off, keeps what was noted, and lets go. Safe to call twice. */
  @Override
  public void close() {
    ending.close();
  }

  private void settle() {
    loop.allOff();
    watch.noteEnd();
    flush();
  }

  private void publish() {
    Dashboard open = dashboard;
    if (open != null) {
      open.live().publish(pages.now()::now);
    }
  }

  /** Looks at what lies in the rooms now. Reads the disk: not for the control loop. */
  void lookAtStock() {
    try {
      List<Recorded> journal = door.journal();
      orders.look(journal, time.now().at());
      watch.look(journal);
    } catch (StoreException e) {
      LOG.error("What lies in the rooms could not be read: {}", e.getMessage());
    }
  }

  /** What the settings say of the probes goes into the journal, from now on. */
  void stateAccuracies() {
    try {
      StatedAccuracies.note(settings.rooms(), door, time.now().at());
    } catch (StoreException e) {
      LOG.error("The accuracy of the probes could not be noted: {}", e.getMessage());
    }
  }

  private static List<Watched> watched(Settings settings) {
    return settings.rooms().stream()
        .map(
            room ->
                new Watched(
                    room,
                    settings.probes().stream()
                        .filter(p -> p.room().equals(room.name()))
                        .map(ProbeSetting::name)
                        .toList()))
        .toList();
  }

  private static List<String> outdoorProbes(Settings settings) {
    return settings.probes().stream()
        .filter(p -> p.place() == ProbePlace.OUTDOOR)
        .map(ProbeSetting::name)
        .toList();
  }
}
