package rindward.controller.journal;

import java.time.Instant;

/** So many fruits are set aside for a purpose; replaces what was set aside for it before. */
public record Reserved(String lot, Purpose purpose, int count, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.reserved(this);
  }
}
