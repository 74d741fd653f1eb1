package rindward.controller.mixed;

import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleBounds;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;

/** Finds the spreads that data and prior speak for most, on the scale of their logarithms. */
public final class LikeliestSpreads {
  private static final int ATTEMPTS = 20_000;
  private static final double FIRST_STEP = 0.5;

  private LikeliestSpreads() {}

  /**
   * Finds them.
   *
   * @param start spreads to start from, above zero
   * @param precision of their logarithms, where the search ends
   */
  public static double[] of(MixedModel model, LogPrior prior, double[] start, double precision) {
    int count = start.length;
    double[] low = new double[count];
    double[] high = new double[count];
    double[] guess = new double[count];
    for (int i = 0; i < count; i++) {
      guess[i] = Math.log(start[i]);
      low[i] = guess[i] - 12;
      high[i] = guess[i] + 12;
    }
    double[] found =
        new BOBYQAOptimizer(2 * count + 1, FIRST_STEP, precision)
            .optimize(
                new MaxEval(ATTEMPTS),
                new ObjectiveFunction(logs -> logDensity(model, prior, logs)),
                GoalType.MAXIMIZE,
                new InitialGuess(guess),
                new SimpleBounds(low, high))
            .getPoint();
    return spreads(found);
  }

  /** Returns how likely spreads of such logarithms are, the prior on the spreads themselves. */
  static double logDensity(MixedModel model, LogPrior prior, double[] logs) {
    double[] spreads = spreads(logs);
    return model.at(spreads).logLikelihood() + prior.of(spreads);
  }

  static double[] spreads(double[] logs) {
    double[] spreads = new double[logs.length];
    for (int i = 0; i < logs.length; i++) {
      spreads[i] = Math.exp(logs[i]);
    }
    return spreads;
  }
}
