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

  /** A lot of which no more was said. */
  public Harvested(String lot, String crop, String variety, int count, String place, Instant at) {
    this(lot, crop, variety, count, place, at, null, null, null);
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.harvested(this);
  }
}
