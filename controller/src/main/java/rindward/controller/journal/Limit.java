package rindward.controller.journal;

import java.time.LocalDate;
import java.util.regex.Pattern;

/** Limits that several kinds of entry share. */
final class Limit {
  static final int MOST_FRUITS = 1_000_000;
  static final int MOST_GRAMS = 100_000_000;

  /** No farm has written down anything before, and no seed lives until after. */
  private static final LocalDate EARLIEST = LocalDate.of(1970, 1, 1);

  private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);
  static final String REASON = "it must lie between " + EARLIEST + " and " + LATEST;

  private static final Pattern CODE = Pattern.compile("[A-Z0-9][A-Z0-9-]{0,11}");

  private Limit() {}

  /** Tells whether a text may be the code of a lot. */
  static boolean isCode(String text) {
    return CODE.matcher(text).matches();
  }

  /** Tells whether a day is one that somebody can mean. */
  static boolean isWithinReason(LocalDate day) {
    return !day.isBefore(EARLIEST) && !day.isAfter(LATEST);
  }

  /** The code of a lot that is to be known by it from now on. */
  static Field<String> newCode() {
    return Field.lot()
        .where(Limit::isCode, "it must be 1 to 12 capital letters, digits or hyphens");
  }
}
