package rindward.controller.lot;

import java.time.Instant;

/**
 * A lot was in a place.
 *
 * @param place a room's name, or any other place such as porch or cellar
 * @param from inclusive
 * @param to exclusive; {@link Instant#MAX} while it is still there
 */
public record Stay(String place, Instant from, Instant to) {}
