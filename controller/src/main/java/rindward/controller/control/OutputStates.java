package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.estimate.AirEstimate;
import rindward.controller.estimate.OutputState;
import rindward.hardware.OutputKind;

/**
 * Since when each output of a room has been as it is. What was never decided counts as off since
 * the start, so that every minimum off time begins anew there.
 *
 * @param states by kind
 * @param startedNanos when the controller started, monotonic
 */
public record OutputStates(Map<OutputKind, OutputState> states, long startedNanos) {
  public OutputStates {
    states = Map.copyOf(states);
  }

  /** Returns an output's state. */
  public OutputState of(OutputKind kind) {
    OutputState state = states.get(kind);
    return state == null ? new OutputState(false, startedNanos, Double.NaN, Double.NaN) : state;
  }

  /** Returns the states after a decision, those that were switched with the air at that moment. */
  OutputStates after(
      Map<OutputKind, OutputDecision> decisions, @Nullable AirEstimate air, long nowNanos) {
    boolean changes = states.isEmpty();
    for (Map.Entry<OutputKind, OutputDecision> decision : decisions.entrySet()) {
      changes |= of(decision.getKey()).on() != decision.getValue().on();
    }
    if (!changes) {
      return this;
    }
    double airC = air == null ? Double.NaN : air.airC();
    double saidC = air == null ? Double.NaN : air.followerC();
    Map<OutputKind, OutputState> next = new EnumMap<>(OutputKind.class);
    decisions.forEach(
        (kind, decision) -> {
          OutputState before = of(kind);
          next.put(
              kind,
              before.on() == decision.on()
                  ? before
                  : new OutputState(decision.on(), nowNanos, airC, saidC));
        });
    return new OutputStates(next, startedNanos);
  }
}
