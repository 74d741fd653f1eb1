package rindward.controller.store;

/**
 * A session or an API token, as a row.
 *
 * @param hash of its secret, which is not kept
 * @param role the role's word
 */
public record StoredToken(
    String hash,
    String id,
    String person,
    String role,
    boolean isSession,
    String label,
    long createdMillis,
    long expiresMillis) {}
