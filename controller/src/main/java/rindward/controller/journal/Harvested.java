package rindward.controller.journal;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A lot came in.
 *
 * @param crop key of its type in the crop guide
 * @param variety the grower's name for the variety; may be empty
 * @param count fruits, bulbs or roots, at least one
 * @param place where it went first
 * @param at when it was harvested
 * @param grade how ripe it looked; null if nobody said
 * @param weightGrams of all of it; null if not weighed
 * @param plot where it grew; null if nobody said
 */
public record Harvested(
    String lot,
    String crop,
    String variety,
    int count,
    String place,
    Instant at,
    @Nullable Grade grade,
    @Nullable Integer weightGrams,
    @Nullable String plot)
    implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Harvested> KIND =
      EntryKind.of(
          "harvested",
          Harvested.class,
          Limit.newCode(),
          Field.crop(),
          Field.text("variety"),
          Field.whole("count").within(1, Limit.MOST_FRUITS),
          Field.text("place").notBlank("it must name a room or another place"),
          Field.at(),
          Field.word("grade", Grade.class).orNothing(),
          Field.whole("weightGrams")
              .column("weight_g")
              .called("weight in grams")
              .orNothing()
              .within(1, Limit.MOST_GRAMS),
          Field.text("plot").orNothing());

  /** A lot of which no more was said. */
  public Harvested(String lot, String crop, String variety, int count, String place, Instant at) {
    this(lot, crop, variety, count, place, at, null, null, null);
  }
}
