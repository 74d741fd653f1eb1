package rindward.controller.mixed;

/** What is believed of a model's spreads before anything was measured. */
@FunctionalInterface
public interface LogPrior {
  /** Every spread is as likely as any other: the most likely ones are then those of REML. */
  LogPrior NONE = spreads -> 0;

  /** Returns the logarithm of how likely such spreads are, up to a constant. */
  double of(double[] spreads);
}
