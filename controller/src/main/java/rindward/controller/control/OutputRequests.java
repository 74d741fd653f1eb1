package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import rindward.hardware.OutputKind;

/**
 * What the rules want of a room's outputs. The stronger right wins; of two equal ones, off. Lives
 * for one decision.
 */
public final class OutputRequests {
  private static final OutputDecision NONE =
      new OutputDecision(false, Precedence.ECONOMY, Reason.of(ReasonCode.NO_WISH));

  private final Map<OutputKind, OutputDecision> strongest = new EnumMap<>(OutputKind.class);

  /** Requests an output on. */
  public void on(OutputKind kind, Precedence right, Reason reason) {
    request(kind, new OutputDecision(true, right, reason));
  }

  /** Requests an output off. */
  public void off(OutputKind kind, Precedence right, Reason reason) {
    request(kind, new OutputDecision(false, right, reason));
  }

  /** Returns the strongest request for an output. */
  public OutputDecision of(OutputKind kind) {
    return strongest.getOrDefault(kind, NONE);
  }

  private void request(OutputKind kind, OutputDecision request) {
    OutputDecision before = strongest.get(kind);
    if (before == null
        || request.right().isStrongerThan(before.right())
        || (request.right() == before.right() && !request.on())) {
      strongest.put(kind, request);
    }
  }
}
