package rindward.dashboard.signin;

import java.time.Instant;

/**
 * A secret that stands for a person, known only by its hash: a browser's session or a program's API
 * token.
 *
 * @param hash SHA-256 of the secret in base64url; a secret of 256 random bits needs no slower one
 * @param id a short public name by which it can be revoked
 * @param person whom it stands for
 * @param role at most that person's own
 * @param label what it is for, in the person's words; the browser's kind for a session
 * @param expiresAt from then on it is worth nothing
 */
public record Token(
    String hash,
    String id,
    String person,
    Role role,
    boolean isSession,
    String label,
    Instant createdAt,
    Instant expiresAt) {}
