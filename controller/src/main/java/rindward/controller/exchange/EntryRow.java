package rindward.controller.exchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One row of a file of lots, field by field. What cannot be read is refused in one sentence that
 * names the column.
 *
 * @param fields by column; a column that is missing or empty was not said
 * @param zone whose days and local times are meant
 */
record EntryRow(Map<String, String> fields, ZoneId zone) {
  private static final int MOST_DIGITS = 12;

  /** Every column, in the order in which they are written. */
  static final List<String> COLUMNS =
      List.of(
          "kind",
          "lot",
          "at",
          "crop",
          "variety",
          "plot",
          "check",
          "plants",
          "sown",
          "transplanted",
          "expected_days",
          "count",
          "place",
          "grade",
          "weight_g",
          "tare_g",
          "fruit",
          "cause",
          "purpose",
          "sign",
          "days_low",
          "days_high",
          "what",
          "day",
          "minimum_c",
          "minutes",
          "covered",
          "water_soaked",
          "seeds",
          "liking",
          "moistness",
          "good_for",
          "flesh_mm",
          "colour",
          "free_liquid",
          "rot_inside",
          "dry_matter_pct",
          "soluble_solids_pct",
          "found",
          "note");

  /** Returns the text as it stands; empty if none was given. */
  String text(String column) {
    return fields.getOrDefault(column, "");
  }

  @Nullable String textOrNull(String column) {
    String text = text(column);
    return text.isEmpty() ? null : text;
  }

  int whole(String column) throws MalformedRow {
    Integer value = wholeOrNull(column);
    if (value == null) {
      throw wrong(column, "it must be a whole number");
    }
    return value;
  }

  int whole(String column, int otherwise) throws MalformedRow {
    Integer value = wholeOrNull(column);
    return value == null ? otherwise : value;
  }

  @Nullable Integer wholeOrNull(String column) throws MalformedRow {
    String text = text(column).strip();
    if (text.isEmpty()) {
      return null;
    }
    try {
      return Integer.valueOf(text);
    } catch (NumberFormatException e) {
      throw wrong(column, "it must be a whole number");
    }
  }

  /** Returns a decimal number in thousandths. */
  int thousandths(String column) throws MalformedRow {
    String text = text(column).strip();
    try {
      if (text.length() <= MOST_DIGITS) {
        return new BigDecimal(text)
            .movePointRight(3)
            .setScale(0, RoundingMode.HALF_UP)
            .intValueExact();
      }
    } catch (ArithmeticException | NumberFormatException e) {
      // The sentence below says all there is to say.
    }
    throw wrong(column, "it must be a number such as -1.5");
  }

  @Nullable Integer thousandthsOrNull(String column) throws MalformedRow {
    return text(column).isBlank() ? null : Integer.valueOf(thousandths(column));
  }

  /** Returns words that are separated by blanks. */
  <E extends Enum<E>> List<E> words(String column, Class<E> words) throws MalformedRow {
    List<E> all = new ArrayList<>();
    for (String word : text(column).strip().split(" +", -1)) {
      if (!word.isEmpty()) {
        all.add(new EntryRow(Map.of(column, word), zone).word(column, words));
      }
    }
    return all;
  }

  boolean yes(String column) throws MalformedRow {
    return switch (text(column).strip()) {
      case "yes" -> true;
      case "", "no" -> false;
      default -> throw wrong(column, "it must be yes or no");
    };
  }

  Instant at() throws MalformedRow {
    String text = text("at").strip();
    try {
      if (text.endsWith("Z")) {
        return Instant.parse(text);
      }
      return text.indexOf('T') > 0
          ? LocalDateTime.parse(text).atZone(zone).toInstant()
          : LocalDate.parse(text).atStartOfDay(zone).toInstant();
    } catch (DateTimeException e) {
      throw wrong("at", "it must be a day or a time, such as 2026-10-03 or 2026-10-03T14:30");
    }
  }

  @Nullable LocalDate dayOrNull(String column) throws MalformedRow {
    String text = text(column).strip();
    if (text.isEmpty()) {
      return null;
    }
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw wrong(column, "it must be a day such as 2026-10-03");
    }
  }

  LocalDate day(String column) throws MalformedRow {
    LocalDate day = dayOrNull(column);
    if (day == null) {
      throw wrong(column, "it must be a day such as 2026-10-03");
    }
    return day;
  }

  <E extends Enum<E>> E word(String column, Class<E> words) throws MalformedRow {
    E word = wordOrNull(column, words);
    if (word == null) {
      throw wrong(column, "it must be one of " + all(words));
    }
    return word;
  }

  <E extends Enum<E>> @Nullable E wordOrNull(String column, Class<E> words) throws MalformedRow {
    String text = text(column).strip();
    if (text.isEmpty()) {
      return null;
    }
    for (E word : words.getEnumConstants()) {
      if (word.toString().equalsIgnoreCase(text)) {
        return word;
      }
    }
    throw wrong(column, "it must be one of " + all(words));
  }

  MalformedRow wrong(String column, String must) {
    return new MalformedRow(column + " was '" + text(column) + "' but " + must);
  }

  private static <E extends Enum<E>> String all(Class<E> words) {
    return Arrays.stream(words.getEnumConstants())
        .map(Enum::toString)
        .collect(Collectors.joining(", "));
  }
}
