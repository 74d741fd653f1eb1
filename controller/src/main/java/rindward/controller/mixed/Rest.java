package rindward.controller.mixed;

import java.util.Arrays;

/**
 * What is left of each row when all effects are taken off: drawn with a spread of its own, and with
 * a further one on top where a row is of a coarser kind.
 *
 * @param spread which of the model's spreads every row is drawn with
 * @param coarseSpread which one comes on top; -1 if no row is coarse
 * @param isCoarse of every row
 */
public record Rest(int spread, int coarseSpread, boolean[] isCoarse) {
  /** Returns a rest that is the same for all rows. */
  public static Rest same(int spread, int rows) {
    return new Rest(spread, -1, new boolean[rows]);
  }

  int kinds() {
    return coarseSpread < 0 ? 1 : 2;
  }

  int kindOf(int row) {
    return isCoarse[row] ? 1 : 0;
  }

  /** Returns the variance of every kind of row. */
  double[] variances(double[] spreads) {
    double[] variances = new double[kinds()];
    Arrays.fill(variances, spreads[spread] * spreads[spread]);
    if (variances.length > 1) {
      variances[1] += spreads[coarseSpread] * spreads[coarseSpread];
    }
    return variances;
  }
}
