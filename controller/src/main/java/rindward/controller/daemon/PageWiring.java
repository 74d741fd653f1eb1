package rindward.controller.daemon;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.crop.Range;
import rindward.controller.desk.AlarmBook;
import rindward.controller.desk.AlarmWords;
import rindward.controller.desk.HandSwitching;
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
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.settings.PageSetting;
import rindward.controller.settings.PageSetting.TlsSetting;
import rindward.controller.settings.Settings;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EventLog;
import rindward.controller.store.SignInStore;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.copies.Copies;
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

/** The pages wired by hand: every desk, and the server that asks them. */
final class PageWiring {
  private final Settings settings;
  private final NowDesk now;
  private final LotPages lots;
  private final Executor later;
  private final Map<String, Executor> supervised = new HashMap<>();
  private final Desks desks;
  private final Supplier<String> metrics;
  private final Time time;

  PageWiring(
      Settings settings,
      Database database,
      Copies copies,
      EntryService door,
      SampleStore samples,
      LotJudge judge,
      Function<String, ProbeReading> latestOf,
      Supplier<@Nullable ShedSnapshot> latest,
      HandSwitching switches,
      AlarmWiring watch,
      Supplier<String> metrics,
      Executor worker,
      TaskSupervisor tasks,
      Time time) {
    this.settings = settings;
    SupervisedTask sums = tasks.task("lot-sums", Cadence.whenAsked());
    this.later = work -> worker.execute(() -> sums.run(work::run));
    for (String name : Supervision.TASKS) {
      SupervisedTask task = tasks.task(name, Cadence.whenAsked());
      supervised.put(name, turn -> task.run(turn::run));
    }
    this.metrics = metrics;
    this.time = time;
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
    this.now = new NowDesk(settings.siteName(), settings.altitudeM(), lots, latest);
    this.desks =
        new Desks(
            now,
            new RoomHistory(
                settings.rooms(),
                room -> rangeNow(latest.get(), room),
                settings.zone(),
                settings.hold().toMillis(),
                samples::history,
                new SwitchingLog(database),
                new RoomMarks(
                    watch.table(), new AlarmLog(new EventLog(database)), settings.crops(), lots),
                () -> time.now().at()),
            lots,
            new TastingPages(settings.zone(), settings.crops(), door, lots, () -> time.now().at()),
            new VarietyPages(settings.zone(), settings.crops(), door, lots, () -> time.now().at()),
            new ShedParts(
                BuildVersion.told(),
                settings.probes(),
                latestOf,
                latest,
                tasks::health,
                switches,
                time::now),
            new KeptRecord(door::journal, copies),
            new AlarmBook(
                new AlarmWords(watch.table(), settings.zone()),
                watch.table(),
                settings.rooms(),
                door,
                new AlarmLog(new EventLog(database)),
                latest,
                watch.keeper()::accepted,
                () -> watch.keeper().hear(door.journal()),
                () -> time.now().at()),
            says -> Square.of(says).svg(),
            new KeptSignIn(new SignInStore(database)));
  }

  /** Returns what does what was said over the broker. */
  BrokerCommands hand() {
    return new BrokerCommands(desks.alarms(), desks.shed());
  }

  ShedDesk shed() {
    return desks.shed();
  }

  NowDesk now() {
    return now;
  }

  /**
   * Begins to serve.
   *
   * @param announce shows the one-time code by which the first owner signs in, while there is none
   * @throws IllegalStateException when the address cannot be listened on, or certificate or key
   *     cannot be used
   */
  Dashboard open(Consumer<String> announce) {
    PageSetting page = settings.page();
    Dashboard dashboard =
        new Dashboard(
            new DashboardSettings(
                page.address(), page.port(), names(page), page.openReading(), identity(page)),
            desks,
            metrics,
            () -> time.now().at(),
            task -> Objects.requireNonNull(supervised.get(task)));
    dashboard.start();
    later.execute(lots::prepare);
    dashboard.announceCode(announce);
    return dashboard;
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
  private static Optional<Range> rangeNow(@Nullable ShedSnapshot latest, Room room) {
    return latest == null
        ? Optional.of(room.range())
        : latest.rooms().stream()
            .filter(state -> state.room().name().equals(room.name()) && !state.rests())
            .map(RoomState::range)
            .findFirst();
  }
}
