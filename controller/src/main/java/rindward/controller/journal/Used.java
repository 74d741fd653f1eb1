package rindward.controller.journal;

import java.time.Instant;

/** Sound fruits were used; those set aside for the purpose go first. */
public record Used(String lot, int count, Purpose purpose, Instant at) implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.used(this);
  }
}
