package rindward.controller.control;

import java.time.Instant;

/**
 * The one now that everything in a tick sees.
 *
 * @param at wall time, for the record
 * @param nanos monotonic time, for durations
 */
public record Tick(Instant at, long nanos) {}
