package rindward.dashboard.signin;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;

/** Draws secrets, and knows them again by their hash without telling how far a guess was right. */
final class Secrets {
  private static final int SECRET_BYTES = 32;
  private static final int ID_BYTES = 6;

  /** Without the letters and figures that are mistaken for each other. */
  private static final String CODE_ALPHABET = "ACDEFGHJKLMNPQRTUVWXY34679";

  private static final int CODE_LETTERS = 10; // 47 bits, tried a few hundred times a day at most
  private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();

  private final SecureRandom random = new SecureRandom();

  /** Returns 256 random bits as text that a cookie or a header can carry. */
  String secret() {
    return bytes(SECRET_BYTES);
  }

  /** Returns a short name that is not secret. */
  String id() {
    return bytes(ID_BYTES);
  }

  /** Returns a code to be read from one screen and typed into another, in two halves. */
  String code() {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < CODE_LETTERS; i++) {
      code.append(i == CODE_LETTERS / 2 ? "-" : "");
      code.append(CODE_ALPHABET.charAt(random.nextInt(CODE_ALPHABET.length())));
    }
    return code.toString();
  }

  static String hash(String secret) {
    try {
      byte[] bytes = secret.getBytes(StandardCharsets.UTF_8);
      return TEXT.encodeToString(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException everyJavaHasIt) {
      throw new IllegalStateException(everyJavaHasIt);
    }
  }

  /** Compares in a time that depends on nothing but the length. */
  static boolean same(String a, String b) {
    return MessageDigest.isEqual(
        a.getBytes(StandardCharsets.UTF_8), b.getBytes(StandardCharsets.UTF_8));
  }

  private String bytes(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return TEXT.encodeToString(bytes);
  }
}
