package rindward.controller.exchange;

import java.util.regex.Pattern;

/**
 * One text in a file that a spreadsheet opens. A cell that begins as a formula does would be
 * reckoned by it, whoever typed it, so such a text is written with an apostrophe before it, as a
 * person would write it there, and read again without. A number stays a number.
 */
final class Cell {
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+([.,]\\d+)?");
  private static final String BEGINS_A_FORMULA = "=+-@";
  private static final char APOSTROPHE = '\'';

  private Cell() {}

  /** Returns a text as it is written. */
  static String written(String typed) {
    return isHarmless(typed) ? typed : APOSTROPHE + typed;
  }

  /** Returns what was typed. */
  static String typed(String written) {
    boolean isMarked =
        !written.isEmpty() && written.charAt(0) == APOSTROPHE && !isHarmless(written.substring(1));
    return isMarked ? written.substring(1) : written;
  }

  /** A text is also marked when it would lose an apostrophe of its own in reading. */
  private static boolean isHarmless(String text) {
    if (text.isEmpty() || NUMBER.matcher(text).matches()) {
      return true;
    }
    char first = text.charAt(0);
    return first == APOSTROPHE
        ? isHarmless(text.substring(1))
        : BEGINS_A_FORMULA.indexOf(first) < 0 && !Character.isISOControl(first);
  }
}
