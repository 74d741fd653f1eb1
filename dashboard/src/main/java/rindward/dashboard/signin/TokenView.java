package rindward.dashboard.signin;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One session or API token of the reader's own.
 *
 * @param kind {@code session} or {@code api}
 * @param isThis whether this very request was made with it
 * @param secret what a program sends as {@code Authorization: Bearer}; only in the answer that made
 *     the token, never again
 */
public record TokenView(
    String id,
    String kind,
    String label,
    Role role,
    Instant createdAt,
    Instant expiresAt,
    boolean isThis,
    @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable String secret) {

  static TokenView of(Token token, Caller caller, @Nullable String secret) {
    return new TokenView(
        token.id(),
        token.isSession() ? "session" : "api",
        token.label(),
        token.role(),
        token.createdAt(),
        token.expiresAt(),
        token.id().equals(caller.tokenId()),
        secret);
  }
}
