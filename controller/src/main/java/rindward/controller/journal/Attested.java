package rindward.controller.journal;

import java.time.Instant;

/** Somebody saw that the lot has cured, and says how. Told, never counted as measured. */
public record Attested(String lot, String text, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.attested(this);
  }
}
