package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTurn;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.journal.Purpose;
import rindward.controller.journal.Used;
import rindward.controller.judge.LotJudge;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.EventLog;
import rindward.controller.store.Journal;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.dashboard.rooms.MarksView;
import rindward.dashboard.rooms.MarksView.CalledView;
import rindward.dashboard.rooms.MarksView.MovedView;

/** What is marked on a room's axis of time. */
class RoomMarksTest {
  private static final Instant START = Instant.parse("2026-09-20T08:00:00Z");
  private static final AlarmId DRY = AlarmId.of(AlarmKind.TOO_DRY, "storage");
  private static final AlarmId DISK = AlarmId.ofShed(AlarmKind.DISK_NEARLY_FULL);

  @TempDir private Path folder;
  private Database database;
  private SampleLog log;
  private EntryService door;
  private RoomMarks marks;

  @BeforeEach
  void open() {
    CropGuide crops = CropGuideReader.builtIn();
    database = new Database(folder.resolve("shed.sqlite"));
    log = new SampleLog(database);
    door = new EntryService(new Journal(database), crops);
    LotPages lots =
        new LotPages(
            List.of(),
            ZoneId.of("UTC"),
            crops,
            Duration.ofMinutes(5).toMillis(),
            door,
            new LotJudge(crops, 300_000, new SampleStore(database, log)::history, door::journal),
            new SampleStore(database, log)::history,
            Runnable::run,
            () -> hour(200));
    marks =
        new RoomMarks(
            AlarmTableReader.builtIn(), new AlarmLog(new EventLog(database)), crops, lots);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void anAlarmIsMarkedFromItsCallToItsEnd() {
    turn(1, DRY, true, false);
    turn(3, DRY, false, true);
    turn(5, DRY, true, false);
    assertThat(view("storage", 0, 10).alarms())
        .containsExactly(
            new CalledView("too-dry@storage", "Too dry", "storage", null, false, hour(1), hour(3)),
            new CalledView("too-dry@storage", "Too dry", "storage", null, false, hour(5), null));
  }

  @Test
  void anAlarmThatBeganBeforeTheStretchIsMarkedWhileItReachesIntoIt() {
    turn(1, DRY, true, false);
    turn(3, DRY, false, true);
    assertThat(view("storage", 2, 10).alarms()).hasSize(1);
    assertThat(view("storage", 4, 10).alarms()).isEmpty();
  }

  @Test
  void anAlarmThatLastsSinceAutumnIsMarkedInSpring() {
    turn(1, DRY, true, false);
    int spring = 180 * 24;
    assertThat(view("storage", spring, spring + 24).alarms())
        .extracting(CalledView::began)
        .containsExactly(hour(1));
  }

  @Test
  void everyRoomShowsWhatTheWholeShedCalledAboutAndNothingOfAnotherRoom() {
    turn(1, DISK, true, false);
    turn(2, DRY, true, false);
    assertThat(view("curing", 0, 10).alarms())
        .extracting(CalledView::room, CalledView::began)
        .containsExactly(tuple(null, hour(1)));
  }

  @Test
  void aLotIsMarkedWhenItComesAndWhenItGoes() {
    say(new Harvested("K4T", "kabocha", "Winterglut", 3, "curing", hour(0)));
    say(new Moved("K4T", "storage", hour(4)));
    say(new Used("K4T", 3, Purpose.KITCHEN, hour(9)));
    assertThat(view("curing", 0, 10).moves())
        .containsExactly(moved(0, true, null), moved(4, false, "storage"));
    assertThat(view("storage", 0, 10).moves())
        .containsExactly(moved(4, true, "curing"), moved(9, false, null));
    assertThat(view("storage", 5, 9).moves()).isEmpty();
  }

  private static MovedView moved(int hour, boolean isIn, String place) {
    return new MovedView(hour(hour), "K4T", "kabocha", "Winterglut", isIn, place);
  }

  private MarksView view(String room, int fromHour, int toHour) {
    return marks.view(room, hour(fromHour), hour(toHour));
  }

  private void say(Entry entry) {
    assertThat(
            door.say(entry, "Wren", entry.toString(), OptionalLong.empty(), entry.at()).refusal())
        .isEmpty();
  }

  private void turn(int hour, AlarmId id, boolean isCall, boolean isOver) {
    AlarmState raised = AlarmState.UNACKNOWLEDGED;
    AlarmChange change =
        new AlarmChange(
            id,
            isCall ? AlarmState.NORMAL : raised,
            isOver ? AlarmState.RETURNED_UNACKNOWLEDGED : raised,
            isCall,
            isOver);
    String text = AlarmLog.text(new AlarmTurn(change, Alarm.NEVER, ""));
    String room = id.room().isEmpty() ? null : id.room();
    log.event(hour(hour).toEpochMilli(), room, AlarmLog.KIND, text);
    log.flush(hour(hour).toEpochMilli());
  }

  private static Instant hour(int hour) {
    return START.plus(Duration.ofHours(hour));
  }
}
