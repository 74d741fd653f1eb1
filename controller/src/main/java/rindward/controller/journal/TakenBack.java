package rindward.controller.journal;

import java.time.Instant;

/** The entry of this id should never have been said of the session; it stays in the journal. */
public record TakenBack(String session, long entry, Instant at) implements Tasting {
  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.takenBack(this);
  }
}
