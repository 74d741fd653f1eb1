package rindward.dashboard.shed;

import java.time.Instant;

/**
 * A person's order to an output. It always ends.
 *
 * @param room the room's name
 * @param kind what the output does, in the settings' word
 * @param on whether it shall be on, or off, until then
 * @param until when it runs by itself again
 * @param by who orders it
 * @param request the same for the same order sent again
 */
public record ManualCommand(
    String room, String kind, boolean on, Instant until, String by, String request) {}
