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
  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.cooked(this);
  }
}
