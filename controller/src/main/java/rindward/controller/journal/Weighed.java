package rindward.controller.journal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Fruits were put on a scale.
 *
 * @param fruit tag of one sample fruit; null for crates of the lot
 * @param count fruits on the scale
 * @param grossGrams with crates
 * @param tareGrams the crates alone; 0 without
 */
public record Weighed(
    String lot, @Nullable String fruit, int count, int grossGrams, int tareGrams, Instant at)
    implements OfLot {
  /** Returns the weight of the fruits alone. */
  public int netGrams() {
    return grossGrams - tareGrams;
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.weighed(this);
  }
}
