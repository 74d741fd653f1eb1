package rindward.controller.control;

import java.util.EnumMap;
import java.util.Map;
import rindward.hardware.OutputKind;

/**
 * What the rules want of a room's outputs. The stronger right wins; of two equal ones, off. Lives
 * for one decision.
 */
final class Wishes {
  private static final Ruling NONE = new Ruling(false, Right.ECONOMY, Reason.of(Because.NO_WISH));

  private final Map<OutputKind, Ruling> strongest = new EnumMap<>(OutputKind.class);

  /** Wishes an output on. */
  void on(OutputKind kind, Right right, Reason reason) {
    wish(kind, new Ruling(true, right, reason));
  }

  /** Wishes an output off. */
  void off(OutputKind kind, Right right, Reason reason) {
    wish(kind, new Ruling(false, right, reason));
  }

  /** Returns the strongest wish for an output. */
  Ruling of(OutputKind kind) {
    return strongest.getOrDefault(kind, NONE);
  }

  private void wish(OutputKind kind, Ruling wish) {
    Ruling before = strongest.get(kind);
    if (before == null
        || wish.right().isStrongerThan(before.right())
        || (wish.right() == before.right() && !wish.on())) {
      strongest.put(kind, wish);
    }
  }
}
