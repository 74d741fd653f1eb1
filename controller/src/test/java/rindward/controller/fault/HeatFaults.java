package rindward.controller.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.fault.TrialShed.CURING;
import static rindward.controller.fault.TrialShed.said;

import java.nio.file.Path;
import java.time.Duration;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.control.ReasonCode;
import rindward.hardware.OutputKind;
import rindward.hardware.shed.ShedFault.Kind;

/**
 * A heater that does not stop while a room cures on warm days, when there is least to see it by.
 */
final class HeatFaults {
  private static final Duration BOUND = Duration.ofMinutes(15);

  private HeatFaults() {}

  static FaultRow weldedInSeptember(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.inSeptember(folder, example -> example)) {
      Welded welded = welded(trial);
      assertThat(welded.aired()).isTrue();
      return trial.row(
          "heater relay welded on while a room cures in September",
          "cannot open it, but stops the heartbeat; moves the air and airs it while outside is"
              + " cooler: the room reached "
              + Math.round(welded.warmestC())
              + " C in an hour",
          bound(welded),
          "\"Moves the air: the heater is switched off, yet it went on warming ...\", \"Airing: the"
              + " heater is switched off ...\"",
          "as in January");
    }
  }

  static FaultRow weldedWithoutOutdoors(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.inSeptember(folder, HeatFaults::withoutOutdoors)) {
      Welded welded = welded(trial);
      assertThat(welded.aired()).isFalse();
      return trial.row(
          "the same without an outdoor probe",
          "cannot open it, but stops the heartbeat; moves the air, and lets none in, for it may be"
              + " warmer outside: the room reached "
              + Math.round(welded.warmestC())
              + " C in an hour",
          bound(welded),
          "\"Moves the air: the heater is switched off, yet it went on warming ...\"",
          "as in January");
    }
  }

  /** A solid-state relay fails closed; it pulses, so there is less to see than behind a contact. */
  static FaultRow shorted(Path folder) throws Exception {
    try (TrialShed trial = TrialShed.inSeptember(folder, HeatFaults::withSolidState)) {
      Welded shorted = welded(trial);
      return trial.row(
          "solid-state relay of a heater shorted while a room cures in September",
          "as for a welded contact: it is the mechanical contactor before it that opens, once the"
              + " heartbeat stops. Without one, as here, the room reached "
              + Math.round(shorted.warmestC())
              + " C in an hour, and the high limit is the bound",
          bound(shorted),
          "as above",
          "as in January");
    }
  }

  private static String withSolidState(String example) {
    String relay = "[outputs.curing-heater]\n";
    assertThat(example).contains(relay);
    return example.replace(relay, relay + "contact = \"solid-state\"\n");
  }

  private record Welded(Duration called, double warmestC, boolean aired) {}

  /** The contact welds while the room is heated, and holds for an hour after the command. */
  private static Welded welded(TrialShed trial) throws Exception {
    trial.until(() -> trial.isCommanded(CURING, OutputKind.HEATER), Duration.ofHours(24));
    trial.breaks(Kind.OUTPUT_STUCK_ON, "curing-heater", 0);
    trial.until(() -> !trial.isCommanded(CURING, OutputKind.HEATER), Duration.ofMinutes(30));
    double warmestC = 0;
    boolean isAired = false;
    int ticks = (int) Duration.ofHours(1).dividedBy(trial.settings.tick());
    for (int i = 0; i < ticks; i++) {
      trial.tick();
      warmestC = Math.max(warmestC, trial.airC(CURING));
      isAired |= because(trial, OutputKind.EXHAUST) == ReasonCode.AIRS_UNBIDDEN_HEAT;
      assertThat(trial.isCommanded(CURING, OutputKind.CIRCULATION)).as("tick " + i).isTrue();
    }
    assertThat(because(trial, OutputKind.CIRCULATION)).isEqualTo(ReasonCode.MOVES_UNBIDDEN_HEAT);
    Duration called = trial.calledAfter(AlarmKind.HEATER_RUNAWAY);
    assertThat(called).isLessThanOrEqualTo(BOUND);
    assertThat(trial.isHeartbeatStopped()).isTrue();
    return new Welded(called, warmestC, isAired);
  }

  private static ReasonCode because(TrialShed trial, OutputKind kind) {
    return trial.ruling(CURING, kind).reason().because();
  }

  private static String bound(Welded welded) {
    return "the heartbeat stops after " + said(welded.called()) + " (bound 15 min)";
  }

  private static String withoutOutdoors(String example) {
    int from = example.indexOf("[probes.outdoor]");
    return example.substring(0, from) + example.substring(example.indexOf("\n#", from));
  }
}
