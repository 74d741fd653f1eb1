package rindward.controller.control;

import java.util.Map;
import rindward.controller.estimate.OutputState;
import rindward.controller.estimate.RoomEstimate;
import rindward.hardware.OutputKind;

/**
 * What one decision hands to the next. Over a restart only what is believed of the room is kept
 * ({@link KeptMemory}); every minimum off time starts anew.
 *
 * @param outputs since when each output has been as it is
 * @param nanos when the last decision was taken, monotonic
 * @param estimate what the room is doing
 * @param heater what is remembered of the heater
 * @param freshDue air the room is owed, in volumes of its own
 * @param slideC middle of the temperature range that is controlled to; NaN before the first
 */
public record ControlMemory(
    OutputStates outputs,
    long nanos,
    RoomEstimate estimate,
    HeaterMemory heater,
    double freshDue,
    double slideC) {

  /** Returns the memory at the start: everything off, and only just. */
  public static ControlMemory atStart(long nowNanos) {
    return new ControlMemory(
        new OutputStates(Map.of(), nowNanos),
        nowNanos,
        RoomEstimate.unknown(nowNanos),
        HeaterMemory.atStart(nowNanos),
        0,
        Double.NaN);
  }

  /** Returns an output's state. */
  public OutputState switched(OutputKind kind) {
    return outputs.of(kind);
  }

  /** Returns the memory with this tick's views, for the rules to look at. */
  public ControlMemory seeing(
      RoomEstimate nextEstimate, HeaterMemory nextHeater, double nextSlideC) {
    return new ControlMemory(outputs, nanos, nextEstimate, nextHeater, freshDue, nextSlideC);
  }

  /** Returns the memory after a decision. */
  public ControlMemory after(
      Map<OutputKind, OutputDecision> decisions,
      RoomEstimate nextEstimate,
      double nextFreshDue,
      long nowNanos) {
    return new ControlMemory(
        outputs.after(decisions, estimate.air(), nowNanos),
        nowNanos,
        nextEstimate,
        heater.after(decisions, nowNanos),
        nextFreshDue,
        slideC);
  }
}
