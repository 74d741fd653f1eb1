package rindward.controller.keeping;

import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * How far an estimate may be off: 95 % of intervals made this way hold the true value.
 *
 * @param low lower end
 * @param high upper end, not below {@code low}
 */
public record Interval(double low, double high) {
  /** Chance of a true value above the interval, and of one below it. */
  private static final double TAIL = 0.025;

  /** How far the ends lie from the middle of a normal distribution, in its deviations. */
  private static final double NORMAL = NormalDistribution.of(0, 1).inverseSurvivalProbability(TAIL);

  public Interval {
    if (!(low <= high)) {
      throw new IllegalArgumentException(
          "interval was " + low + ".." + high + " but the lower end must come first");
    }
  }

  /**
   * Returns Student's interval around an estimate.
   *
   * @param standardError of the estimate, not negative
   * @param degreesOfFreedom at least one
   */
  public static Interval student(double estimate, double standardError, int degreesOfFreedom) {
    double reach =
        TDistribution.of(degreesOfFreedom).inverseSurvivalProbability(TAIL) * standardError;
    return new Interval(estimate - reach, estimate + reach);
  }

  /** Returns Student's interval around the mean; empty below two values, which tell no spread. */
  public static Optional<Interval> ofMean(double... values) {
    int n = values.length;
    if (n < 2) {
      return Optional.empty();
    }
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Optional.of(student(mean, Math.sqrt(squares / (n - 1) / n), n - 1));
  }

  /**
   * Returns the interval around a share of which so many were found, by the score method (Wilson
   * 1927, Journal of the American Statistical Association 22: 209; Newcombe 1998, Statistics in
   * Medicine 17: 857, recommends it for few). It stays within 0 and 1.
   *
   * @param found how many of them, 0 to {@code of}
   * @param of at least one
   */
  public static Interval ofShare(int found, int of) {
    double share = (double) found / of;
    double square = NORMAL * NORMAL / of;
    double middle = (share + square / 2) / (1 + square);
    double reach = NORMAL * Math.sqrt((share * (1 - share) + square / 4) / of) / (1 + square);
    return new Interval(
        found == 0 ? 0 : Math.max(0, middle - reach),
        found == of ? 1 : Math.min(1, middle + reach));
  }

  /** Returns the arithmetic mean of at least one value. */
  public static double mean(double... values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
