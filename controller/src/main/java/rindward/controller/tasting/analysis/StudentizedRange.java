package rindward.controller.tasting.analysis;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How far apart the largest and the smallest of k standard normal values lie, known variance
 * (infinite degrees of freedom):
 *
 * <pre>P(range &lt;= q) = k integral phi(z) (Phi(z) - Phi(z - q))^(k-1) dz
 * </pre>
 */
final class StudentizedRange {
  private static final ContinuousDistribution NORMAL = NormalDistribution.of(0, 1);

  /** Beyond this many standard deviations the density is below 1e-14. */
  private static final double FAR = 8;

  private static final int STRIPS = 400;

  private static final double WIDEST = 10;

  private StudentizedRange() {}

  /** Returns the range that {@code k} values exceed with a chance of 5 %. */
  static double upperFivePercent(int k) {
    double low = 0;
    double high = WIDEST;
    for (int halving = 0; halving < 40; halving++) {
      double middle = (low + high) / 2;
      if (probabilityBelow(middle, k) < 0.95) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Simpson's rule over the largest of the values. */
  private static double probabilityBelow(double range, int k) {
    double width = 2 * FAR / STRIPS;
    double sum = 0;
    for (int i = 0; i <= STRIPS; i++) {
      double z = -FAR + i * width;
      int weight = i == 0 || i == STRIPS ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * NORMAL.density(z) * Math.pow(NORMAL.probability(z - range, z), k - 1);
    }
    return k * sum * width / 3;
  }
}
