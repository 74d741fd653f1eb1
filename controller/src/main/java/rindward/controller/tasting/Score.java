package rindward.controller.tasting;

/**
 * One answer of one panelist about one cup.
 *
 * @param code on the cup
 * @param attribute what was asked
 * @param value on the attribute's scale
 */
public record Score(String code, Attribute attribute, int value) {}
