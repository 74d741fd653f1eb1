package rindward.controller.daemon;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rindward.controller.broadcast.Intake.Signer;
import rindward.controller.store.SignInStore;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoredPerson;
import rindward.controller.store.StoredToken;
import rindward.dashboard.signin.Role;

/**
 * Who may speak over the broker: whoever made an API token on the page that may do a helper's work,
 * and may still do it themselves. Asked for in the record with each word, so that a token that was
 * ended a moment ago is worth nothing, and no page is needed. For one thread.
 */
final class WordKeys {
  private final SignInStore store;
  private final Time time;

  WordKeys(SignInStore store, Time time) {
    this.store = store;
    this.time = time;
  }

  /**
   * Returns who signs with the token of this public name; nobody while the record cannot be read.
   */
  Optional<Signer> of(String id) {
    try {
      return signer(id);
    } catch (StoreException e) {
      return Optional.empty();
    }
  }

  private Optional<Signer> signer(String id) {
    List<StoredToken> tokens =
        store.tokens().stream().filter(token -> token.id().equals(id)).toList();
    if (tokens.isEmpty()) {
      return Optional.empty();
    }
    Instant now = time.now().at();
    Map<String, String> roles =
        store.people().stream().collect(Collectors.toMap(StoredPerson::name, StoredPerson::role));
    return tokens.stream()
        .filter(token -> !token.isSession())
        .filter(token -> now.isBefore(Instant.ofEpochMilli(token.expiresMillis())))
        .filter(token -> isHelper(token.role()) && isHelper(roles.getOrDefault(token.person(), "")))
        .map(token -> new Signer(token.person(), secret(token.hash())))
        .findFirst();
  }

  private static boolean isHelper(String role) {
    return !role.isEmpty() && Role.of(role).covers(Role.HELPER);
  }

  /** What is kept of a token is its SHA-256, which is what its holder signs with. */
  private static byte[] secret(String hash) {
    return Base64.getUrlDecoder().decode(hash.getBytes(StandardCharsets.US_ASCII));
  }
}
