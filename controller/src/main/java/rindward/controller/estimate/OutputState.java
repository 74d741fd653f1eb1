package rindward.controller.estimate;

/**
 * An output's state and since when: what it was switched to, and what the air was like then, so
 * that its effect can be told from what came of it.
 *
 * @param sinceNanos monotonic
 * @param airC the room's air at that moment, probe lag made up for; NaN if unknown
 * @param saidC what the probes said of it, which no sudden change can exaggerate; NaN if unknown
 */
public record OutputState(boolean on, long sinceNanos, double airC, double saidC) {}
