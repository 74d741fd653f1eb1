package rindward.controller.tasting.analysis;

import rindward.controller.tasting.Scale;

/**
 * How a fruit of some age was liked.
 *
 * @param day days since harvest when it was cut
 * @param liking on the nine-point scale; a panel's mean may lie between points
 * @param occasion how it came to be tasted
 */
public record AgedTaste(int day, double liking, Occasion occasion) {
  /** How a taste came about, with how much it weighs. Common practice. */
  public enum Occasion {
    /** A bite in the kitchen by one person who knew what it was. */
    KITCHEN(1),
    /** The mean of a panel's session. */
    SESSION(4);

    private final int weight;

    Occasion(int weight) {
      this.weight = weight;
    }

    int weight() {
      return weight;
    }
  }

  public AgedTaste {
    if (day < 0) {
      throw new IllegalArgumentException("day was '" + day + "' but it must not be negative");
    }
    if (!(Scale.LIKING.lowest() <= liking && liking <= Scale.LIKING.highest())) {
      throw new IllegalArgumentException(
          "liking was '" + liking + "' but it must be 1 (dislike extremely) to 9 (like extremely)");
    }
  }
}
