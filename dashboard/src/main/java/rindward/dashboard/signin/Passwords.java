package rindward.dashboard.signin;

import at.favre.lib.crypto.bcrypt.BCrypt;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Hashes passwords with bcrypt. One at a time: on a small board each costs a good part of a second,
 * and a crowd of wrong ones must not take every core from the rooms.
 */
final class Passwords {

  private static final int FEWEST_LETTERS = 10;
  private static final int MOST_BYTES = 72; // bcrypt reads no further

  private static final int SALT_AND_HASH = 53;

  private final int cost;

  /**
   * @param cost the logarithm of the work, 4 to 31
   */
  Passwords(int cost) {
    this.cost = cost;
  }

  /**
   * Returns why a password cannot be taken, in one sentence without the password; empty if it can.
   */
  static String refusal(String password) {
    if (password.codePointCount(0, password.length()) < FEWEST_LETTERS) {
      return "The password is too short: it must have at least " + FEWEST_LETTERS + " characters.";
    }
    if (password.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      return "The password is too long: it must have at most " + MOST_BYTES + " bytes.";
    }
    return "";
  }

  synchronized String hash(String password) {
    return BCrypt.withDefaults().hashToString(cost, password.toCharArray());
  }

  synchronized boolean matches(String password, String hash) {
    return password.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES
        && BCrypt.verifyer().verify(password.toCharArray(), hash).verified;
  }

  /** Takes as long as a wrong password does, so that nobody learns who is known here. */
  void pretend(String password) {
    boolean unused = matches(password, standIn());
  }

  /** Returns the hash of no password, at the same cost. */
  String standIn() {
    return String.format(Locale.ROOT, "$2a$%02d$%s", cost, ".".repeat(SALT_AND_HASH));
  }
}
