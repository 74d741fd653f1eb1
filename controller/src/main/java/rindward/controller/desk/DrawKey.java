package rindward.controller.desk;

import java.security.SecureRandom;
import java.util.HexFormat;

/** The key of a session's draw: 128 bits, so that no codes and no links of it can be guessed. */
public final class DrawKey {
  private static final int BYTES = 16;

  private DrawKey() {}

  /** Returns a key that nobody has seen: 32 digits of base 16. */
  public static String fresh() {
    byte[] bits = new byte[BYTES];
    new SecureRandom().nextBytes(bits);
    return HexFormat.of().formatHex(bits);
  }
}
