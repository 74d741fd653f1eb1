package rindward.controller.judge;

import rindward.controller.crop.Range;

/**
 * What a place with probes offers the lots in it.
 *
 * @param place its name
 * @param range the air it is meant to have
 * @param cures whether it is there for curing
 * @param accuracyMilliC how good its least accurate thermometer is, thousandths of a degree C
 */
public record Surroundings(String place, Range range, boolean cures, int accuracyMilliC) {}
