package rindward.controller.lot;

import java.time.Instant;

/**
 * What a recount missed.
 *
 * @param fruits fewer than the books said; below zero if more were found
 * @param at when it was counted
 */
public record Missed(int fruits, Instant at) {}
