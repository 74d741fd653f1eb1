package rindward.controller.journal;

import java.time.Instant;

/** Somebody counted: so many sound fruits are there, whatever the books say. */
public record Recounted(String lot, int count, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.recounted(this);
  }
}
