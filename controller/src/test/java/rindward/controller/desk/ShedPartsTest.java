package rindward.controller.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Tick;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Order;
import rindward.controller.room.Picture;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.room.Room;
import rindward.controller.settings.Settings.ProbeSetting;
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

  private final Asked switches = new Asked();
  private final TaskSupervisor tasks = new TaskSupervisor(() -> AT, () -> NANOS);
  private ShedSnapshot latest =
      snapshot(new OutputDecision(false, Precedence.ECONOMY, new Reason(ReasonCode.NO_WISH, 0, 0)));
  private final ShedParts parts =
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
          name ->
              new ProbeReading(
                  name, ProbePlace.AIR, new Reading(27_400, 79_250), NANOS - 6_000_000_000L, null),
          () -> latest,
          tasks::health,
          switches,
          () -> new Tick(AT, NANOS));

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
  void command_isAskedOfTheRoomUntilItEnds() throws SwitchingRefused {
    parts.command(heater(true));
    assertThat(switches.command)
        .isEqualTo(
            new rindward.controller.room.ManualCommand(OutputKind.HEATER, true, LATER, "Wren"));
    assertThat(parts.shed().outputs().get(0).manual())
        .isEqualTo(new ShedView.ManualView(true, LATER, "Wren"));
    parts.release("curing", "heater", "Wren");
    assertThat(parts.shed().outputs().get(0).manual()).isNull();
  }

  @Test
  void command_thatAStrongerRightForbids_isRefusedWithItsReason() {
    Reason reason = new Reason(ReasonCode.TOO_WARM_TO_HEAT, 31_000, 29_000);
    latest = snapshot(new OutputDecision(false, Precedence.OVERHEATING, reason));
    assertThatThrownBy(() -> parts.command(heater(true)))
        .isInstanceOf(SwitchingRefused.class)
        .hasMessage("The heater cannot be switched on now. " + reason.sentence());
    assertThat(switches.command).isNull();
  }

  @Test
  void command_thatTheRoomRefuses_isRefusedInItsWords() {
    switches.refusal = Optional.of("Room curing is only observed until it has been commissioned.");
    assertThatThrownBy(() -> parts.command(heater(true)))
        .hasMessage("Room curing is only observed until it has been commissioned.");
  }

  @Test
  void command_toWhatIsNotThere_isRefused() {
    assertThatThrownBy(
            () -> parts.command(new ManualCommand("curing", "cooler", true, LATER, "Wren", "r")))
        .hasMessage("The room curing has no cooler.");
    assertThatThrownBy(() -> parts.release("attic", "heater", "Wren"))
        .hasMessage("There is no room attic.");
    latest = null;
    assertThatThrownBy(() -> parts.command(heater(true))).hasMessageContaining("try again");
    assertThat(parts.shed().health().get(0).wrong()).isTrue();
  }

  /** Takes one command, or refuses it. */
  private static final class Asked implements HandSwitching {
    private rindward.controller.room.ManualCommand command;
    private Optional<String> refusal = Optional.empty();

    @Override
    public Order of(Room room, Instant at) {
      Order order = Order.of(room);
      return new Order(
          order.range(), 0, order.stock(), command == null ? List.of() : List.of(command));
    }

    @Override
    public Optional<String> command(
        String room, rindward.controller.room.ManualCommand asked, Instant now) {
      if (refusal.isEmpty()) {
        command = asked;
      }
      return refusal;
    }

    @Override
    public void release(String room, OutputKind kind, Instant now) {
      command = null;
    }
  }

  private static ManualCommand heater(boolean on) {
    return new ManualCommand("curing", "heater", on, LATER, "Wren", "request-1");
  }

  private static ShedSnapshot snapshot(OutputDecision ruling) {
    Room room = CuringRoom.withAHeater();
    RoomState state =
        new RoomState(
            room, Order.of(room), Picture.NONE, Map.of(OutputKind.HEATER, ruling), Map.of());
    return new ShedSnapshot(7, AT, Duration.ofMillis(3), 0, Picture.NONE, List.of(state), "");
  }
}
