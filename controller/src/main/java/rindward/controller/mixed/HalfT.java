package rindward.controller.mixed;

import java.util.Arrays;

/**
 * Weakly informative priors: each spread is the size of a t variable with {@link #FREEDOM} degrees
 * of freedom and a scale of its own (Gelman 2006, Bayesian Analysis 1: 515, section 4.2: of the
 * half-t family, with enough freedom that few groups cannot make a spread explode). That a spread
 * is integrated over, not maximised, keeps it from collapsing to zero, which Chung, Rabe-Hesketh,
 * Dorie, Gelman, Liu 2013 (Psychometrika 78: 685) show for the maximum.
 *
 * @param scales one a spread, in the model's order
 */
public record HalfT(double[] scales) implements LogPrior {
  static final double FREEDOM = 4;

  @Override
  public double of(double[] spreads) {
    double sum = 0;
    for (int i = 0; i < scales.length; i++) {
      double ratio = spreads[i] / scales[i];
      sum -= (FREEDOM + 1) / 2 * Math.log1p(ratio * ratio / FREEDOM);
    }
    return sum;
  }

  /** Returns scales to start a search from. */
  double[] start() {
    return Arrays.copyOf(scales, scales.length);
  }
}
