package rindward.controller.exchange;

import java.time.LocalDate;
import java.time.LocalTime;

/**
 * The form of a time that most loggers write, {@code 2026-10-01T12:00:00Z}, read where it stands: a
 * formatter that reads every form takes most of the time that a long recording needs.
 */
final class PlainInstant {
  private static final String FORM = "0000-00-00T00:00:00Z";
  private static final long MILLIS_A_DAY = 86_400_000;
  private static final long MILLIS_A_SECOND = 1_000;

  private PlainInstant() {}

  /** Tells whether a text has this form; the day or the hour may still be none. */
  static boolean fits(String text) {
    if (text.length() != FORM.length()) {
      return false;
    }
    for (int i = 0; i < FORM.length(); i++) {
      char wanted = FORM.charAt(i);
      char is = text.charAt(i);
      if (wanted == '0' ? is < '0' || is > '9' : is != wanted) {
        return false;
      }
    }
    return true;
  }

  /**
   * Returns the instant in epoch milliseconds.
   *
   * @throws java.time.DateTimeException where there is no such day or time
   */
  static long millis(String text) {
    long day =
        LocalDate.of(number(text, 0, 4), number(text, 5, 2), number(text, 8, 2)).toEpochDay();
    int second =
        LocalTime.of(number(text, 11, 2), number(text, 14, 2), number(text, 17, 2)).toSecondOfDay();
    return day * MILLIS_A_DAY + second * MILLIS_A_SECOND;
  }

  private static int number(String text, int from, int digits) {
    int number = 0;
    for (int i = from; i < from + digits; i++) {
      number = number * 10 + text.charAt(i) - '0';
    }
    return number;
  }
}
