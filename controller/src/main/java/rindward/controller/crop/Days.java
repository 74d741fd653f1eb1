package rindward.controller.crop;

/**
 * A number of days that is known only as a range, both ends kept.
 *
 * @param low the short end
 * @param high the long end, not below {@code low}
 */
public record Days(int low, int high) {
  public Days {
    if (low < 0 || low > high) {
      throw new IllegalArgumentException(
          "days were " + low + ".." + high + " but they must not be negative and the lower first");
    }
  }

  /** Returns the range as part of a sentence, such as "60 to 90". */
  public String words() {
    return low == high ? String.valueOf(low) : low + " to " + high;
  }
}
