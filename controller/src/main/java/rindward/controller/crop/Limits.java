package rindward.controller.crop;

/**
 * A lower and an upper limit of one quantity, in thousandths of its unit. Both limits belong to the
 * inside.
 *
 * @param low lower limit, inclusive
 * @param high upper limit, inclusive; not below {@code low}
 */
public record Limits(int low, int high) {
  public Limits {
    if (low > high) {
      throw new IllegalArgumentException(
          "limits were " + low + ".." + high + " but the lower one must come first");
    }
  }

  /** Tells whether a measured value lies inside, a value exactly on a limit included. */
  public boolean contains(int value) {
    return low <= value && value <= high;
  }

  /** Returns the width between the limits. */
  public int width() {
    return high - low;
  }

  /** Returns the middle, rounded down. */
  public int middle() {
    return Math.floorDiv(low + high, 2);
  }
}
