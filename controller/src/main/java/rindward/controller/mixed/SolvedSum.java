package rindward.controller.mixed;

/**
 * What a model says of a sum of effects, for given spreads: it is normally distributed so.
 *
 * @param error standard deviation, the free terms' own doubt included
 * @param conditionalError the same as if the free terms were known
 */
public record SolvedSum(double mean, double error, double conditionalError) {}
