package rindward.controller.journal;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A day in the field was written down, as early as on the plan: what tells the age of a fruit.
 *
 * @param what happened
 * @param day on which it happened
 * @param fruits on how many fruits the tag hangs; 0 if it holds for the whole lot
 */
public record FieldDayNoted(String lot, FieldDay what, LocalDate day, int fruits, Instant at)
    implements OfLot {
  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.fieldDayNoted(this);
  }
}
