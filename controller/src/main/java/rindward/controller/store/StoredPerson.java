package rindward.controller.store;

/**
 * Somebody who may sign in, as a row.
 *
 * @param role the role's word
 * @param passwordHash never the password
 */
public record StoredPerson(String name, String role, String passwordHash) {}
