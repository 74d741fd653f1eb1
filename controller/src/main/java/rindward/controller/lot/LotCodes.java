package rindward.controller.lot;

import java.util.Optional;
import java.util.Set;

/**
 * Suggests codes for lots: three characters, or four when those are used up, each with a digit in
 * the second place. No two characters look alike when painted, smudged or upside down: no B 8, D O
 * Q 0, G 6, I L 1, S 5, U V, Z 2 N, and no W, which is an M on a fruit that has rolled over.
 */
public final class LotCodes {
  private static final String LETTERS = "ACEFHJKMPRTXY";
  private static final String DIGITS = "3479";
  private static final String ALL = LETTERS + DIGITS;

  /**
   * Takes codes that follow one another far apart; shares no factor with either number of codes.
   */
  private static final int STRIDE = 397;

  private LotCodes() {}

  /**
   * Returns a code that is not taken; empty if all are.
   *
   * @param taken codes of lots and plans; others that people made up may be among them
   */
  public static Optional<String> suggest(Set<String> taken) {
    return suggest(taken, 3).or(() -> suggest(taken, 4));
  }

  private static Optional<String> suggest(Set<String> taken, int length) {
    int codes = ALL.length() * DIGITS.length() * (length == 4 ? ALL.length() : 1) * ALL.length();
    for (int i = 0; i < codes; i++) {
      String code = code((int) ((long) i * STRIDE % codes), length);
      if (!taken.contains(code)) {
        return Optional.of(code);
      }
    }
    return Optional.empty();
  }

  private static String code(int number, int length) {
    StringBuilder code = new StringBuilder();
    int rest = number;
    for (int place = length - 1; place >= 0; place--) {
      String characters = place == 1 ? DIGITS : ALL;
      code.insert(0, characters.charAt(rest % characters.length()));
      rest /= characters.length();
    }
    return code.toString();
  }
}
