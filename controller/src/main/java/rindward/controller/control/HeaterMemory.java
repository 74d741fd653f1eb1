package rindward.controller.control;

import java.util.Map;
import rindward.hardware.OutputKind;

/**
 * What control remembers of a room's heater from tick to tick.
 *
 * @param heatedNanos when it last ran, monotonic; long before the start if never
 * @param modulation how a solid-state heater is dosed
 * @param failed whether it was last stopped because it had no effect
 * @param suspicion whether the room is heated though its heater is commanded off
 */
public record HeaterMemory(
    long heatedNanos, HeaterModulation modulation, boolean failed, HeatSuspicion suspicion) {
  /** Long enough ago for every rule that asks how long ago something was. */
  private static final long NEVER_NANOS = 86_400_000_000_000L;

  static HeaterMemory atStart(long nowNanos) {
    return new HeaterMemory(
        nowNanos - NEVER_NANOS, HeaterModulation.NONE, false, HeatSuspicion.NONE);
  }

  /** Returns the memory with what is suspected now. */
  public HeaterMemory suspecting(HeatSuspicion next) {
    return new HeaterMemory(heatedNanos, modulation, failed, next);
  }

  /** Returns the memory with the share of heat that this tick gives. */
  public HeaterMemory dosing(HeaterModulation next) {
    return new HeaterMemory(heatedNanos, next, failed, suspicion);
  }

  /** Returns the memory after a decision. */
  HeaterMemory after(Map<OutputKind, OutputDecision> decisions, long nowNanos) {
    OutputDecision heater = decisions.get(OutputKind.HEATER);
    boolean heats = heater != null && heater.on();
    boolean fails = heater != null && heater.reason().because() == ReasonCode.HEAT_WITHOUT_EFFECT;
    return new HeaterMemory(
        heats ? nowNanos : heatedNanos, modulation, fails || (failed && !heats), suspicion);
  }
}
