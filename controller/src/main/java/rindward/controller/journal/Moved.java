package rindward.controller.journal;

import java.time.Instant;

/** A lot went to another place. */
public record Moved(String lot, String place, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.moved(this);
  }
}
