package rindward.controller.control;

/**
 * What was decided for one output.
 *
 * @param on whether it runs
 * @param right in whose name
 * @param reason why
 */
public record Ruling(boolean on, Right right, Reason reason) {}
