package rindward.controller.store;

import org.jspecify.annotations.Nullable;

/**
 * Something the controller did, and why.
 *
 * @param id place among the events, rising from 1; 0 before it is kept
 * @param atMillis when, epoch milliseconds UTC
 * @param room where; null for the whole house
 * @param kind what sort of thing, one word, for example {@code relay}
 * @param text what was done and why, in plain words
 */
public record StoredEvent(
    long id, long atMillis, @Nullable String room, String kind, String text) {}
