package rindward.controller.journal;

import java.time.Instant;

/**
 * Seeds of the lot were laid out to see how many sprout.
 *
 * @param seeds how many were laid out
 * @param sprouted how many of them sprouted
 * @param days after how many days they were counted
 * @param note how it was done, such as "damp paper, 25 C"; may be empty
 */
public record GerminationTested(
    String lot, int seeds, int sprouted, int days, String note, Instant at) implements OfLot {
  private static final int MOST_SEEDS = 10_000;
  private static final int MOST_DAYS = 100;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<GerminationTested> KIND =
      EntryKind.of(
              "germination",
              GerminationTested.class,
              Field.lot(),
              Field.whole("seeds").column("seeds_tested").within(1, MOST_SEEDS),
              Field.whole("sprouted").column("seeds_sprouted").within(0, MOST_SEEDS),
              Field.whole("days").within(1, MOST_DAYS),
              Field.text("note"),
              Field.at())
          .where(test -> FieldErrors.whole("sprouted", test.sprouted, 0, test.seeds));
}
