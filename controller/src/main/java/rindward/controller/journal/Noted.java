package rindward.controller.journal;

import java.time.Instant;

/** Anything worth remembering. */
public record Noted(String lot, String text, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.noted(this);
  }
}
