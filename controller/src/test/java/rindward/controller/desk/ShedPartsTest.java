package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Tick;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.SwitchedByHand;
import rindward.controller.ledger.Accuracy;
import rindward.controller.link.ControlReport;
import rindward.controller.link.StoodStillControl;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
import rindward.controller.settings.CropGuideReader;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.Work;
import rindward.dashboard.shed.ManualCommand;
import rindward.dashboard.shed.ShedView;
import rindward.dashboard.shed.SwitchingRefused;
import rindward.hardware.OutputKind;
import rindward.hardware.Reading;
import rindward.hardware.wired.Offset;
import rindward.hardware.wired.Simulated;

/** The shed's parts as their page shows them, and what may be switched by hand. */
class ShedPartsTest {
  private static final Instant AT = Instant.parse("2026-10-03T09:15:30Z");
  private static final Instant LATER = AT.plusSeconds(900);
  private static final long NANOS = 500_000_000_000L;

  private static final OutputDecision RESTS =
      new OutputDecision(false, Precedence.ECONOMY, new Reason(ReasonCode.NO_WISH, 0, 0));

  @TempDir private Path folder;
  private final TaskSupervisor tasks = new TaskSupervisor(() -> AT, () -> NANOS);
  private final StoodStillControl control = new StoodStillControl();
  private Database database;
  private EntryService door;
  private ShedParts parts;

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("record.db"));
    door = new EntryService(new Journal(database), CropGuideReader.builtIn());
    control.report = report(snapshot(RESTS));
    parts =
        new ShedParts(
            "0.2.0",
            List.of(
                new ProbeSetting(
                    "air",
                    "curing",
                    ProbePlace.AIR,
                    new Simulated(),
                    Offset.NONE,
                    new Accuracy(200, 2_000))),
            control,
            tasks::states,
            door,
            () -> new Tick(AT, NANOS));
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void shed_showsATaskThatFails_untilItSucceeds() {
    SupervisedTask flush = tasks.task("flush", Cadence.whenAsked());
    Work fails =
        () -> {
          throw new IOException("the card does not answer");
        };
    flush.run(fails);
    flush.run(fails);
    assertThat(parts.shed().health())
        .contains(
            new ShedView.HealthView(
                "Task flush",
                "has failed 2 times in a row and is tried again: the card does not answer",
                true));

    flush.run(() -> {});
    assertThat(parts.shed().health()).noneMatch(ShedView.HealthView::wrong);
  }

  @Test
  void shed_showsEachProbeWithItsAgeAndEachOutputWithItsReason() {
    ShedView shed = parts.shed();
    assertThat(shed.probes())
        .containsExactly(new ShedView.ProbeView("air", "curing", "air", 27.4, 79.25, 6L, null));
    assertThat(shed.outputs())
        .containsExactly(
            new ShedView.OutputView(
                "curing", "warmer", "heater", false, "Nothing asks for it.", null, null));
    assertThat(shed.health()).noneMatch(ShedView.HealthView::wrong);
  }

  @Test
  void command_isAnEntryThatControlIsAskedToLookAt_andIsShownAtOnce() throws SwitchingRefused {
    parts.command(heater(true));

    assertThat(door.journal())
        .extracting(Recorded::entry)
        .containsExactly(new SwitchedByHand("curing", OutputKind.HEATER, true, LATER, AT));
    assertThat(door.journal().get(0).by()).isEqualTo("Wren");
    assertThat(control.looks).isOne();
    assertThat(parts.shed().outputs().get(0).manual())
        .isEqualTo(new ShedView.ManualView(true, LATER, "Wren"));
    parts.release("curing", "heater", "Wren");
    assertThat(parts.shed().outputs().get(0).manual()).isNull();
    assertThat(control.looks).isEqualTo(2);
  }

  @Test
  void command_thatWasSaidTwice_isOneEntry() throws SwitchingRefused {
    parts.command(heater(true));
    parts.command(heater(true));

    assertThat(door.journal()).hasSize(1);
  }

  @Test
  void command_thatControlHasHeardAndDoesNotCarryOut_isShownNoMore() throws SwitchingRefused {
    parts.command(heater(true));
    control.report = report(snapshot(RESTS), door.last());

    assertThat(parts.shed().outputs().get(0).manual()).isNull();
  }

  @Test
  void command_thatAStrongerRightForbids_isRefusedWithItsReason() {
    Reason reason = new Reason(ReasonCode.TOO_WARM_TO_HEAT, 31_000, 29_000);
    control.report = report(snapshot(new OutputDecision(false, Precedence.OVERHEATING, reason)));
    assertThatThrownBy(() -> parts.command(heater(true)))
        .isInstanceOf(SwitchingRefused.class)
        .hasMessage("The heater cannot be switched on now. " + reason.sentence());
    assertThat(door.journal()).isEmpty();
  }

  @Test
  void command_inARoomThatIsOnlyObserved_isRefused() {
    control.report = report(snapshot(CuringRoom.withAHeater().observed(true), RESTS));
    assertThatThrownBy(() -> parts.command(heater(true)))
        .hasMessage("Room curing is only observed until it has been commissioned.");
  }

  @Test
  void withControlGone_nothingIsSwitchedOn_butOffIsSaidAllTheSame() throws SwitchingRefused {
    control.silence = "Control does not answer.";
    assertThatThrownBy(() -> parts.command(heater(true)))
        .hasMessage("Nothing can be switched on now. Control does not answer.");
    parts.command(heater(false));

    assertThat(door.journal()).hasSize(1);
    assertThat(parts.shed().health())
        .contains(new ShedView.HealthView("Control", "Control does not answer.", true));
  }

  @Test
  void command_toWhatIsNotThere_isRefused() {
    assertThatThrownBy(
            () -> parts.command(new ManualCommand("curing", "cooler", true, LATER, "Wren", "r")))
        .hasMessage("The room curing has no cooler.");
    assertThatThrownBy(() -> parts.release("attic", "heater", "Wren"))
        .hasMessage("There is no room attic.");
    control.report = null;
    assertThatThrownBy(() -> parts.command(heater(true))).hasMessageContaining("try again");
    assertThat(parts.shed().health().get(0).wrong()).isTrue();
  }

  private static ManualCommand heater(boolean on) {
    return new ManualCommand("curing", "heater", on, LATER, "Wren", "request-1");
  }

  private static ControlReport report(ShedSnapshot snapshot) {
    return report(snapshot, 0);
  }

  private static ControlReport report(ShedSnapshot snapshot, long heard) {
    Reading reading = new Reading(27_400, 79_250);
    return StoodStillControl.report(
        snapshot,
        new Tick(AT, NANOS),
        heard,
        List.of(new ProbeReading("air", ProbePlace.AIR, reading, NANOS - 6_000_000_000L, null)),
        List.of());
  }

  private static ShedSnapshot snapshot(OutputDecision ruling) {
    return snapshot(CuringRoom.withAHeater(), ruling);
  }

  private static ShedSnapshot snapshot(Room room, OutputDecision ruling) {
    RoomState state =
        new RoomState(
            room, RoomDemand.of(room), Picture.NONE, Map.of(OutputKind.HEATER, ruling), Map.of());
    return new ShedSnapshot(7, AT, Duration.ofMillis(3), 0, Picture.NONE, List.of(state), "");
  }
}
