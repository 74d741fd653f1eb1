package rindward.controller.mixed;

/**
 * One of the spreads that an answer is averaged over.
 *
 * @param weight of all of them together 1
 */
public record WeightedSpreads(double[] spreads, double weight) {}
