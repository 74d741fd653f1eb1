package rindward.controller.tasting.design;

/**
 * One serving to one panelist.
 *
 * @param code all that the panelist sees of it
 * @param flight which flight it belongs to, from zero
 * @param sample what is in it
 * @param isDuplicate whether the sample was in another cup of this flight already
 */
public record Cup(String code, int flight, String sample, boolean isDuplicate) {}
