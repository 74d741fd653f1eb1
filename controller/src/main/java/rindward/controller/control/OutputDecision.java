package rindward.controller.control;

/**
 * What was decided for one output.
 *
 * @param on whether it runs
 * @param right in whose name
 * @param reason why
 */
public record OutputDecision(boolean on, Precedence right, Reason reason) {}
