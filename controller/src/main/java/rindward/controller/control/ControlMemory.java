package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.estimate.AirEstimate;
import rindward.controller.estimate.HeaterDuty;
import rindward.controller.estimate.IdentifiedResponse;
import rindward.controller.estimate.OutdoorEstimate;
import rindward.controller.estimate.OutputState;
import rindward.hardware.OutputKind;

/**
 * What one decision hands to the next. Not kept over a restart: then every minimum off time starts
 * anew and the room is learned again within hours.
 *
 * @param outputs since when each output has been as it is
 * @param startedNanos when the controller started
 * @param nanos when the last decision was taken
 * @param air how the room's air has moved; null before the first good picture
 * @param outdoor how it has been outdoors
 * @param learned what the room has taught
 * @param heatedNanos when the heater last ran; the start if never
 * @param freshDue air the room is owed, in volumes of its own
 * @param slideC middle of the temperature range that is controlled to; NaN before the first
 * @param share how a solid-state heater is dosed
 * @param duty how much the heater has run of late
 * @param heatFailed whether the heater was last stopped because it had no effect
 * @param suspicion whether the room is heated though its heater is commanded off
 */
public record ControlMemory(
    Map<OutputKind, OutputState> outputs,
    long startedNanos,
    long nanos,
    @Nullable AirEstimate air,
    OutdoorEstimate outdoor,
    IdentifiedResponse learned,
    long heatedNanos,
    double freshDue,
    double slideC,
    HeaterModulation share,
    HeaterDuty duty,
    boolean heatFailed,
    HeatSuspicion suspicion) {
  public ControlMemory {
    outputs = Map.copyOf(outputs);
  }

  /** Returns the memory at the start: everything off, and only just. */
  public static ControlMemory atStart(long nowNanos) {
    return new ControlMemory(
        Map.of(),
        nowNanos,
        nowNanos,
        null,
        OutdoorEstimate.UNKNOWN,
        IdentifiedResponse.NOTHING,
        nowNanos - NEVER_NANOS,
        0,
        Double.NaN,
        HeaterModulation.NONE,
        new HeaterDuty(0, nowNanos),
        false,
        HeatSuspicion.NONE);
  }

  /** Long enough ago for every rule that asks how long ago something was. */
  private static final long NEVER_NANOS = 86_400_000_000_000L;

  /** Returns an output's state. */
  public OutputState switched(OutputKind kind) {
    OutputState switched = outputs.get(kind);
    return switched == null
        ? new OutputState(false, startedNanos, Double.NaN, Double.NaN)
        : switched;
  }

  /** Returns the memory with new views of the air, for the rules to look at. */
  public ControlMemory seeing(
      @Nullable AirEstimate nextAir,
      OutdoorEstimate nextOutdoor,
      double nextSlideC,
      HeatSuspicion nextSuspicion) {
    return new ControlMemory(
        outputs,
        startedNanos,
        nanos,
        nextAir,
        nextOutdoor,
        learned,
        heatedNanos,
        freshDue,
        nextSlideC,
        share,
        duty,
        heatFailed,
        nextSuspicion);
  }

  /** Returns the memory with the share of heat that this tick gives. */
  public ControlMemory sharing(HeaterModulation next) {
    return new ControlMemory(
        outputs,
        startedNanos,
        nanos,
        air,
        outdoor,
        learned,
        heatedNanos,
        freshDue,
        slideC,
        next,
        duty,
        heatFailed,
        suspicion);
  }

  /** Returns the memory after a decision. */
  public ControlMemory after(
      Map<OutputKind, OutputDecision> rulings,
      IdentifiedResponse nextLearned,
      double nextFreshDue,
      HeaterDuty nextDuty,
      long nowNanos) {
    boolean changed = false;
    for (Map.Entry<OutputKind, OutputDecision> ruling : rulings.entrySet()) {
      changed |= switched(ruling.getKey()).on() != ruling.getValue().on();
    }
    OutputDecision heater = rulings.get(OutputKind.HEATER);
    boolean heats = heater != null && heater.on();
    boolean fails = heater != null && heater.reason().because() == ReasonCode.HEAT_WITHOUT_EFFECT;
    return new ControlMemory(
        changed || outputs.isEmpty() ? switched(rulings, nowNanos) : outputs,
        startedNanos,
        nowNanos,
        air,
        outdoor,
        nextLearned,
        heats ? nowNanos : heatedNanos,
        nextFreshDue,
        slideC,
        share,
        nextDuty,
        fails || (heatFailed && !heats),
        suspicion);
  }

  private Map<OutputKind, OutputState> switched(
      Map<OutputKind, OutputDecision> rulings, long nowNanos) {
    double airC = air == null ? Double.NaN : air.airC();
    double saidC = air == null ? Double.NaN : air.followerC();
    Map<OutputKind, OutputState> next = new EnumMap<>(OutputKind.class);
    rulings.forEach(
        (kind, ruling) -> {
          OutputState before = switched(kind);
          next.put(
              kind,
              before.on() == ruling.on()
                  ? before
                  : new OutputState(ruling.on(), nowNanos, airC, saidC));
        });
    return next;
  }
}
