package rindward.controller.store;

/**
 * One entry of the journal, as kept: somebody said something about a subject.
 *
 * @param id place in the journal, rising from 1
 * @param request what the sender called the request, so that a retry is known for one
 * @param subject what it is about, for example a lot; entries of one subject follow each other
 * @param atMillis when it was said, epoch milliseconds UTC
 * @param by who said it
 * @param body what was said, as JSON
 */
public record StoredEntry(
    long id, String request, String subject, long atMillis, String by, String body) {}
