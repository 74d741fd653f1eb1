package rindward.controller.store;

import org.jspecify.annotations.Nullable;

/**
 * Something that happened, other than an output being switched.
 *
 * @param id place among the events, rising from 1; 0 before it is kept
 * @param atMillis when, epoch milliseconds UTC
 * @param room where; null for the whole house
 * @param kind what sort of thing, one word, for example {@code alarm}
 * @param text what it was, as its kind is written
 */
public record StoredEvent(
    long id, long atMillis, @Nullable String room, String kind, String text) {}
