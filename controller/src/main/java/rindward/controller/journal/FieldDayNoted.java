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
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<FieldDayNoted> KIND =
      EntryKind.of(
          "field-day",
          FieldDayNoted.class,
          Field.lot(),
          Field.word("what", FieldDay.class),
          Field.day("day"),
          Field.whole("fruits").column("count").or(0).within(0, Limit.MOST_FRUITS),
          Field.at());
}
