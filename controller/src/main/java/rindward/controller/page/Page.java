package rindward.controller.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.crop.Range;
import rindward.controller.daemon.BuildVersion;
import rindward.controller.daemon.ShutdownStack;
import rindward.controller.daemon.Time;
import rindward.controller.desk.AlarmBook;
import rindward.controller.desk.AlarmWords;
import rindward.controller.desk.KeptRecord;
import rindward.controller.desk.KeptSignIn;
import rindward.controller.desk.LotPages;
import rindward.controller.desk.NowDesk;
import rindward.controller.desk.RoomHistory;
import rindward.controller.desk.RoomMarks;
import rindward.controller.desk.ShedParts;
import rindward.controller.desk.TastingPages;
import rindward.controller.desk.VarietyPages;
import rindward.controller.exchange.Square;
import rindward.controller.judge.LotJudge;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.metrics.Scrape;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.PageSetting;
import rindward.controller.settings.PageSetting.TlsSetting;
import rindward.controller.settings.SafetyProofs;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EventLog;
import rindward.controller.store.Journal;
import rindward.controller.store.SignInStore;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.samples.RecentSamples;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.dashboard.Dashboard;
import rindward.dashboard.DashboardSettings;
import rindward.dashboard.Desks;
import rindward.dashboard.ServerIdentity;
import rindward.dashboard.Supervision;
import rindward.dashboard.shed.ShedDesk;

/**
 * The page wired by hand: the record, every desk, what is counted, and the server that asks them.
 * Of control it has a {@link ControlView} and nothing else.
 */
public final class Page implements AutoCloseable {
  private final Settings settings;
  private final ControlView control;
  private final Time time;
  private final TaskSupervisor tasks;
  private final ShutdownStack ending = new ShutdownStack();
  private final RecentSamples recent = new RecentSamples();
  private final Map<String, Executor> supervised = new HashMap<>();
  private final Executor later;
  private final NowDesk now;
  private final LotPages lots;
  private final Desks desks;
  private final Scrape scrape;
  private @Nullable Dashboard dashboard;

  /** Wires it for a page beside control in one process; nothing is served yet. */
  public Page(Settings settings, ControlView control, Time time) {
    this(
        settings,
        control,
        time,
        Database.ofAnother(settings.store()),
        new TaskSupervisor(() -> time.now().at(), System::nanoTime));
  }

  /** The same with a record that is opened already, and another supervisor of what runs here. */
  Page(Settings settings, ControlView control, Time time, Database database, TaskSupervisor tasks) {
    this.settings = settings;
    this.control = control;
    this.time = time;
    this.tasks = tasks;
    ending.add("database", database::close);
    SampleStore samples = new SampleStore(database, recent);
    control.eachReport(this::hear);
    Executor worker = ending.thread("lot-sums");
    SupervisedTask sums = tasks.task("lot-sums", Cadence.whenAsked());
    this.later = work -> worker.execute(() -> sums.run(work::run));
    for (String name : Supervision.TASKS) {
      SupervisedTask task = tasks.task(name, Cadence.whenAsked());
      supervised.put(name, turn -> task.run(turn::run));
    }
    EntryService door = new EntryService(new Journal(database), settings.crops());
    LotJudge judge =
        new LotJudge(settings.crops(), settings.hold().toMillis(), samples::history, door::journal);
    this.lots =
        new LotPages(
            settings.rooms(),
            settings.zone(),
            settings.crops(),
            settings.hold().toMillis(),
            door,
            judge,
            samples::history,
            later,
            () -> time.now().at());
    this.now = new NowDesk(settings.siteName(), settings.altitudeM(), lots, control);
    AlarmTable table = AlarmTableReader.builtIn();
    this.desks = desks(database, door, samples, table);
    this.scrape =
        new Scrape(
            settings.rooms(),
            settings.altitudeM(),
            settings.probes().stream().map(ProbeSetting::name).toList(),
            control,
            () -> time.now().nanos(),
            table,
            () -> judge.lately(time.now().at(), later).holding(),
            settings.store(),
            tasks::states);
  }

  private Desks desks(Database database, EntryService door, SampleStore samples, AlarmTable table) {
    AlarmLog alarmLog = new AlarmLog(new EventLog(database));
    return new Desks(
        now,
        new RoomHistory(
            settings.rooms(),
            room -> rangeNow(control.latest(), room),
            settings.zone(),
            settings.hold().toMillis(),
            samples::history,
            new SwitchingLog(database),
            new RoomMarks(table, alarmLog, settings.crops(), lots),
            () -> time.now().at()),
        lots,
        new TastingPages(settings.zone(), settings.crops(), door, lots, () -> time.now().at()),
        new VarietyPages(settings.zone(), settings.crops(), door, lots, () -> time.now().at()),
        new ShedParts(
            BuildVersion.told(), settings.probes(), control, tasks::states, door, time::now),
        new KeptRecord(
            door::journal,
            new Copies(database, settings.backups(), settings.zone()),
            said -> SafetyProofs.withWord(settings, said, time.now().at())),
        new AlarmBook(
            new AlarmWords(table, settings.zone()),
            table,
            settings.rooms(),
            door,
            alarmLog,
            control,
            () -> time.now().at()),
        says -> Square.of(says).svg(),
        new KeptSignIn(new SignInStore(database)));
  }

  /** Returns what the shed page shows. */
  public ShedDesk shed() {
    return desks.shed();
  }

  /** Returns what the rooms page shows. */
  public NowDesk now() {
    return now;
  }

  /** Returns the meters as a scrape gets them. */
  public String metrics() {
    return scrape.text();
  }

  /** Returns the port that is listened on; 0 while there is none. */
  public int port() {
    return dashboard == null ? 0 : dashboard.port();
  }

  /**
   * Begins to serve.
   *
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   * @throws IllegalStateException when the address cannot be listened on, or certificate or key
   *     cannot be used
   */
  public void open(Consumer<String> announce) {
    PageSetting page = settings.page();
    Dashboard open =
        new Dashboard(
            new DashboardSettings(
                page.address(), page.port(), names(page), page.openReading(), identity(page)),
            desks,
            scrape::text,
            () -> time.now().at(),
            task -> Objects.requireNonNull(supervised.get(task)));
    open.start();
    ending.add("dashboard", open::close);
    dashboard = open;
    later.execute(lots::prepare);
    open.announceCode(announce);
    control.eachReport(report -> show());
  }

  /** Shows open pages how the shed is now. */
  public void show() {
    Dashboard open = dashboard;
    if (open != null) {
      open.live().publish(now::now);
    }
  }

  /** Ends the server, and lets go of the record. Safe to call twice. */
  @Override
  public void close() {
    ending.close();
  }

  private void hear(ControlReport report) {
    recent.rewritten(report.rewrites());
    long at = report.snapshot().at().toEpochMilli();
    report.snapshot().rooms().forEach(room -> hear(room.room().name(), at, room.picture()));
    if (report.snapshot().outdoors().hasTemperature()) {
      hear(SampleLog.OUTDOORS, at, report.snapshot().outdoors());
    }
  }

  private void hear(String place, long at, Picture picture) {
    recent.add(place, at, picture.temperatureMilliC(), picture.humidityMilliPct());
  }

  /** Phones find a board by its own name, too, where the network says which that is. */
  private static List<String> names(PageSetting page) {
    List<String> names = new ArrayList<>(page.names());
    MachineName.read().ifPresent(own -> names.addAll(List.of(own, own + ".local")));
    return names;
  }

  private static @Nullable ServerIdentity identity(PageSetting page) {
    TlsSetting tls = page.tls();
    try {
      return tls == null ? null : ServerIdentity.read(tls.certificate(), tls.key());
    } catch (IOException e) {
      throw new IllegalStateException("dashboard." + e.getMessage(), e);
    }
  }

  /** Nothing while the room rests. */
  private static Optional<Range> rangeNow(@Nullable ControlReport latest, Room room) {
    return latest == null
        ? Optional.of(room.range())
        : latest.snapshot().rooms().stream()
            .filter(state -> state.room().name().equals(room.name()) && !state.rests())
            .map(RoomState::range)
            .findFirst();
  }
}
