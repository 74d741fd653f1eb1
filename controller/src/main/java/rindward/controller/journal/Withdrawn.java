package rindward.controller.journal;

import java.time.Instant;

/** The entry of this id should never have been said of the lot; it stays in the journal. */
public record Withdrawn(String lot, long entry, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.withdrawn(this);
  }
}
