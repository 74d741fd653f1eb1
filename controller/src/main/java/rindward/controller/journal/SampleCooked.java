package rindward.controller.journal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A fruit was cut and cooked for a sample.
 *
 * @param sample its name in the session
 * @param lot code of the lot it came from
 * @param fruit which one
 * @param weightGrams of the whole fruit; null if not weighed
 * @param minutes until it was done; null if nobody looked
 * @param doneness how it came out; may be empty
 */
public record SampleCooked(
    String session,
    String sample,
    String lot,
    String fruit,
    @Nullable Integer weightGrams,
    CutFruit cut,
    @Nullable Integer minutes,
    String doneness,
    Instant at)
    implements Tasting {
  private static final int MOST_GRAMS = 1_000_000;
  private static final int MOST_MINUTES = 1_440;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<SampleCooked> KIND =
      EntryKind.of(
              "sample-cooked",
              SampleCooked.class,
              Field.text("session"),
              Field.text("sample"),
              Field.text("lot"),
              Field.text("fruit"),
              Field.whole("weightGrams")
                  .called("weight in grams")
                  .orNothing()
                  .within(1, MOST_GRAMS),
              Field.of("cut", CutFruit.PARTS),
              Field.whole("minutes").orNothing().within(0, MOST_MINUTES),
              Field.text("doneness"),
              Field.at())
          .saidBy(Speaker.OWNER);
}
