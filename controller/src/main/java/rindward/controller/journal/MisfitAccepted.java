package rindward.controller.journal;

import java.time.Instant;

/** The lot does not suit the place, and is meant to be there all the same. */
public record MisfitAccepted(String lot, String place, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.misfitAccepted(this);
  }
}
