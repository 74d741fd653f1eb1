package rindward.dashboard.signin;

import io.javalin.http.ConflictResponse;
import io.javalin.http.ForbiddenResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Sessions and API tokens. Looked up with every request, so they are held in memory; a change goes
 * to the desk first, and once a minute the desk is asked what a command ended. For any thread.
 */
final class Tokens {
  /** A season without signing in again: hands are full in the shed. */
  static final Duration SESSION_LIFE = Duration.ofDays(120);

  static final Duration API_TOKEN_LIFE = Duration.ofDays(730);
  static final String API_PREFIX = "rind_";
  private static final int MOST_OF_A_KIND = 20;
  private static final Duration REMEMBERED = Duration.ofMinutes(1);

  private final SignInDesk desk;
  private final Secrets secrets;
  private @Nullable Map<String, Token> byHash;
  private Instant readAt = Instant.EPOCH;

  Tokens(SignInDesk desk, Secrets secrets) {
    this.desk = desk;
    this.secrets = secrets;
  }

  /** A token just made, with the only copy of its secret. */
  record Made(Token token, String secret) {}

  /** Returns whose secret this is, if it is anybody's and still good. */
  synchronized Optional<Token> find(String secret, Instant now) {
    if (byHash != null && Duration.between(readAt, now).compareTo(REMEMBERED) > 0) {
      readAt = now;
      byHash = readAgain(byHash);
    }
    return Optional.ofNullable(known().get(Secrets.hash(secret)))
        .filter(token -> now.isBefore(token.expiresAt()));
  }

  /** Opens a session; of too many, the oldest ends. */
  synchronized Made session(Person person, String label, Instant now) {
    List<Token> open = of(person.name(), true);
    open.stream()
        .limit(Math.max(0, open.size() + 1 - MOST_OF_A_KIND))
        .forEach(token -> forget(token.hash()));
    known().values().stream()
        .filter(token -> !now.isBefore(token.expiresAt()))
        .toList()
        .forEach(token -> forget(token.hash()));
    return make(secrets.secret(), person.name(), person.role(), true, label, now, SESSION_LIFE);
  }

  /**
   * Makes an API token.
   *
   * @throws ForbiddenResponse when the role asked for is more than the caller's own
   * @throws ConflictResponse when the caller has too many
   */
  synchronized Made api(Caller caller, Role role, String label, Instant now) {
    if (!caller.is(role)) {
      throw new ForbiddenResponse("A token cannot be allowed more than you are.");
    }
    if (of(caller.name(), false).size() >= MOST_OF_A_KIND) {
      throw new ConflictResponse(
          "You have " + MOST_OF_A_KIND + " tokens already; end one that is not used any more.");
    }
    String secret = API_PREFIX + secrets.secret();
    return make(secret, caller.name(), role, false, label, now, API_TOKEN_LIFE);
  }

  /** Returns the sessions and tokens of a person, the oldest first. */
  synchronized List<Token> of(String person) {
    return known().values().stream()
        .filter(token -> token.person().equals(person))
        .sorted(Comparator.comparing(Token::createdAt).thenComparing(Token::id))
        .toList();
  }

  /** Ends every session and token of a person but one. */
  synchronized void endAllOf(String person, String exceptId) {
    of(person).stream()
        .filter(token -> !token.id().equals(exceptId))
        .forEach(token -> forget(token.hash()));
  }

  /** Ends one token. Returns it, or nothing when that person has no such token. */
  synchronized Optional<Token> end(String person, String id) {
    Optional<Token> ended = of(person).stream().filter(token -> token.id().equals(id)).findFirst();
    ended.ifPresent(token -> forget(token.hash()));
    return ended;
  }

  private List<Token> of(String person, boolean isSession) {
    return of(person).stream().filter(token -> token.isSession() == isSession).toList();
  }

  private Made make(
      String secret,
      String person,
      Role role,
      boolean isSession,
      String label,
      Instant now,
      Duration life) {
    Token token =
        new Token(
            Secrets.hash(secret),
            secrets.id(),
            person,
            role,
            isSession,
            label,
            now,
            now.plus(life));
    desk.keep(token);
    known().put(token.hash(), token);
    return new Made(token, secret);
  }

  private void forget(String hash) {
    desk.forgetToken(hash);
    known().remove(hash);
  }

  private Map<String, Token> known() {
    if (byHash == null) {
      byHash = read();
    }
    return byHash;
  }

  private Map<String, Token> read() {
    Map<String, Token> read = new HashMap<>();
    desk.tokens().forEach(token -> read.put(token.hash(), token));
    return read;
  }

  /** A store in trouble is no reason to send everybody away who is signed in. */
  private Map<String, Token> readAgain(Map<String, Token> before) {
    try {
      return read();
    } catch (RuntimeException e) {
      return before;
    }
  }
}
