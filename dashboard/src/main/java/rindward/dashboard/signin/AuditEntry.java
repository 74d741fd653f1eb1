package rindward.dashboard.signin;

import java.time.Instant;

/**
 * One change and who made it.
 *
 * @param id place in the record, rising from 1; 0 before it is kept
 * @param who the person, or where the request came from if nobody had signed in
 * @param what what was done, in a few words
 */
public record AuditEntry(long id, Instant at, String who, String what) {}
