package rindward.controller.store;

/**
 * One change that a person made, as a row of the record of changes.
 *
 * @param id place in the record, rising from 1; 0 before it is kept
 */
public record StoredChange(long id, long atMillis, String who, String what) {}
