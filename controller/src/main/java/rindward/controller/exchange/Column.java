package rindward.controller.exchange;

import java.util.List;

/**
 * Where a value stands in a row: a number from 1, or a name in the header.
 *
 * @param text the number, or the name; letter case does not matter
 */
public record Column(String text) {
  public Column {
    text = text.strip();
    if (text.isEmpty()) {
      throw new IllegalArgumentException("column was '' but it must be a number or a header name");
    }
    if (isNumber(text) && numberOf(text) == 0) {
      throw new IllegalArgumentException(
          "column was '" + text + "' but numbers must lie in 1..9999");
    }
  }

  /** Tells whether finding this column takes a header. */
  boolean isNamed() {
    return !isNumber(text);
  }

  /** Returns the place from zero in a row below {@code header}; -1 if it has no such name. */
  int indexIn(List<String> header) {
    if (!isNamed()) {
      return numberOf(text) - 1;
    }
    for (int i = 0; i < header.size(); i++) {
      if (header.get(i).equalsIgnoreCase(text)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isNumber(String text) {
    return text.chars().allMatch(c -> '0' <= c && c <= '9');
  }

  private static int numberOf(String digits) {
    return digits.length() > 4 ? 0 : Integer.parseInt(digits);
  }
}
