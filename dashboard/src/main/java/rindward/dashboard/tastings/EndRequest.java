package rindward.dashboard.tastings;

import org.jspecify.annotations.Nullable;

/**
 * A tasting is closed.
 *
 * @param fruits of the samples of which nobody said which fruits were cooked: <em>as-planned</em>
 *     or <em>not-known</em>; null where all of them are noted
 */
public record EndRequest(@Nullable String fruits) {
  private static final String AS_PLANNED = "as-planned";
  private static final String NOT_KNOWN = "not-known";

  /**
   * @throws IllegalArgumentException naming the field that cannot be
   */
  public EndRequest {
    if (fruits != null && !fruits.equals(AS_PLANNED) && !fruits.equals(NOT_KNOWN)) {
      throw new IllegalArgumentException(
          "fruits was '" + fruits + "' but it must be as-planned or not-known");
    }
  }

  /** Tells whether the fruits that were planned were cooked. */
  public boolean isAsPlanned() {
    return AS_PLANNED.equals(fruits);
  }

  /** Tells whether nobody knows which fruits were cooked. */
  public boolean isNotKnown() {
    return NOT_KNOWN.equals(fruits);
  }
}
