package rindward.controller.journal;

import java.time.Instant;

/**
 * An entry as it stands in the journal.
 *
 * @param id its place in the journal; rises with every entry
 * @param recordedAt when it was said
 * @param by who said it
 */
public record Recorded(long id, Instant recordedAt, String by, Entry entry) {}
