package rindward.controller.journal;

import java.time.Instant;

/** Fruits were lost. The note may be empty. */
public record Culled(String lot, int count, Cause cause, String note, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.culled(this);
  }
}
