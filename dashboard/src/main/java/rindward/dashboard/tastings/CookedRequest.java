package rindward.dashboard.tastings;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * A fruit that was cut and cooked for a sample. What nobody looked at is null.
 *
 * @param fruit which one; may be null where the sample has only one
 * @param weightGrams of the whole fruit
 * @param minutes until it was done
 * @param fleshMm thickness of the flesh
 * @param seeds full or flat
 * @param colour of the flesh
 * @param freeLiquid whether liquid stood in the pan; not if null
 * @param rotInside whether there was rot that nobody saw from outside; not if null
 * @param doneness how it came out
 * @param found what makes it unfit to eat: bitter, green, mould; nothing if null
 */
public record CookedRequest(
    String sample,
    @Nullable String fruit,
    @Nullable Integer weightGrams,
    @Nullable Integer minutes,
    @Nullable Integer fleshMm,
    @Nullable String seeds,
    @Nullable String colour,
    @Nullable Boolean freeLiquid,
    @Nullable Boolean rotInside,
    @Nullable String doneness,
    @Nullable List<String> found) {
  private static final int LONGEST = 200;

  /**
   * @throws IllegalArgumentException naming the field that cannot be
   */
  public CookedRequest {
    found = found == null ? null : List.copyOf(found);
    JsonBody.needed(sample, "sample", LONGEST);
    for (String text : new String[] {fruit, seeds, colour, doneness}) {
      if (text != null) {
        JsonBody.needed(text, "a text of what was cooked", LONGEST);
      }
    }
  }
}
