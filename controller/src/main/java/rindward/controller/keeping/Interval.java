package rindward.controller.keeping;

import java.util.Optional;
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

  /** Returns the arithmetic mean of at least one value. */
  public static double mean(double... values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
