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

  /** Wishes an output on. */
  public void on(OutputKind kind, Precedence right, Reason reason) {
    wish(kind, new OutputDecision(true, right, reason));
  }

  /** Wishes an output off. */
  public void off(OutputKind kind, Precedence right, Reason reason) {
    wish(kind, new OutputDecision(false, right, reason));
  }

  /** Returns the strongest wish for an output. */
  public OutputDecision of(OutputKind kind) {
    return strongest.getOrDefault(kind, NONE);
  }

  private void wish(OutputKind kind, OutputDecision wish) {
    OutputDecision before = strongest.get(kind);
    if (before == null
        || wish.right().isStrongerThan(before.right())
        || (wish.right() == before.right() && !wish.on())) {
      strongest.put(kind, wish);
    }
  }
}
