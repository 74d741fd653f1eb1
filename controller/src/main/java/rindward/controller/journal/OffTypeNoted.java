package rindward.controller.journal;

import java.time.Instant;

/** The fruits are not what their label says: seed that was crossed, or mixed up. */
public record OffTypeNoted(String lot, String text, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.offTypeNoted(this);
  }
}
