package rindward.controller.journal;

import java.util.regex.Pattern;

/** Limits that several kinds of entry share. */
final class Limit {
  static final int MOST_FRUITS = 1_000_000;
  static final int MOST_GRAMS = 100_000_000;

  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,11}");

  private Limit() {}

  /** Tells whether a text may be the code of a lot. */
  static boolean isCode(String text) {
    return CODE.matcher(text).matches();
  }

  /** The code of a lot that is to be known by it from now on. */
  static Field<String> newCode() {
    return Field.lot()
        .where(Limit::isCode, "it must be 1 to 12 capital letters, digits or hyphens");
  }
}
