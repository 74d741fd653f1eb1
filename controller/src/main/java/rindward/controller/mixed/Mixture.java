package rindward.controller.mixed;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What is known of a number when the spreads are not: a weighted mixture of normal distributions.
 * Immutable.
 */
public final class Mixture {
  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final int HALVINGS = 50;

  private final double[] means;
  private final double[] errors;
  private final double[] weights;

  /**
   * Makes a mixture.
   *
   * @param parts what each set of spreads says
   * @param weights how much each counts; together 1
   */
  public Mixture(List<SolvedSum> parts, List<Double> weights) {
    this.means = parts.stream().mapToDouble(SolvedSum::mean).toArray();
    this.errors = parts.stream().mapToDouble(SolvedSum::error).toArray();
    this.weights = weights.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Returns what is expected. */
  public double mean() {
    double mean = 0;
    for (int i = 0; i < means.length; i++) {
      mean += weights[i] * means[i];
    }
    return mean;
  }

  /** Returns the standard deviation. */
  public double error() {
    double mean = mean();
    double variance = 0;
    for (int i = 0; i < means.length; i++) {
      double off = means[i] - mean;
      variance += weights[i] * (errors[i] * errors[i] + off * off);
    }
    return Math.sqrt(variance);
  }

  /** Returns the chance, 0 to 1, that the number is above a limit. */
  public double chanceAbove(double limit) {
    double chance = 0;
    for (int i = 0; i < means.length; i++) {
      chance +=
          errors[i] > 0
              ? weights[i] * NORMAL.survivalProbability((limit - means[i]) / errors[i])
              : means[i] > limit ? weights[i] : 0;
    }
    return chance;
  }

  /** Returns the value below which the number lies with that chance, 0 to 1. */
  public double quantile(double chance) {
    double centre = mean();
    double reach = 12 * error();
    double low = centre - reach;
    double high = centre + reach;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (1 - chanceAbove(middle) < chance) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
