package rindward.controller.settings;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tomlj.TomlArray;
import rindward.controller.crop.Limits;

/**
 * What a key may hold: how its value is read, and the words that say what it must be. Numbers are
 * rounded to thousandths here, once.
 *
 * @param <T> what the value becomes
 * @param must end of the sentence "it must ...", for example "be a text"
 * @param standIn a valid value that is handed on after a problem, so that reading can go on and
 *     find the rest; it is never used, because what was read is dropped when there are problems
 * @param read turns the file's value into a {@code T}, or into null if it is not one
 */
record Kind<T>(String must, T standIn, Function<Object, @Nullable T> read) {
  private static final Pattern DURATION = Pattern.compile("(\\d{1,9})([smhd])");

  /** A text that is not blank. */
  static final Kind<String> TEXT =
      new Kind<>(
          "be a text that is not empty",
          "?",
          value -> value instanceof String text && !text.isBlank() ? text.strip() : null);

  /** Yes or no. */
  static final Kind<Boolean> FLAG =
      new Kind<>("be true or false", false, value -> value instanceof Boolean flag ? flag : null);

  /** Several texts, none of them blank. */
  static final Kind<List<String>> TEXTS =
      new Kind<>(
          "be a list of texts, for example [\"one\", \"two\"]",
          List.of(),
          value -> value instanceof TomlArray array ? each(array, TEXT.read()) : null);

  /** A whole number from {@code low} to {@code high}, both allowed. */
  static Kind<Integer> whole(int low, int high) {
    return new Kind<>(
        "be a whole number from " + low + " to " + high,
        low,
        value -> value instanceof Long n && low <= n && n <= high ? n.intValue() : null);
  }

  /**
   * A number, read into thousandths.
   *
   * @param low least value allowed, in thousandths
   * @param high greatest value allowed, in thousandths
   */
  static Kind<Integer> thousandths(int low, int high) {
    return new Kind<>(
        "be a number from " + plain(low) + " to " + plain(high),
        low,
        value -> inThousandths(value, low, high));
  }

  /**
   * Two numbers, the lower one first, read into thousandths.
   *
   * @param low least value allowed, in thousandths
   * @param high greatest value allowed, in thousandths
   */
  static Kind<Limits> limits(int low, int high) {
    return new Kind<>(
        "be two numbers from " + plain(low) + " to " + plain(high) + ", the lower one first",
        new Limits(low, high),
        value -> {
          List<Integer> ends =
              value instanceof TomlArray array
                  ? each(array, end -> inThousandths(end, low, high))
                  : null;
          return ends != null && ends.size() == 2 && ends.get(0) <= ends.get(1)
              ? new Limits(ends.get(0), ends.get(1))
              : null;
        });
  }

  /** A length of time such as {@code "90s"}, {@code "5m"}, {@code "2h"} or {@code "10d"}. */
  static Kind<Duration> duration(Duration low, Duration high) {
    return new Kind<>(
        "be a time from "
            + brief(low)
            + " to "
            + brief(high)
            + ", written like \"90s\", \"5m\", \"2h\" or \"10d\"",
        low,
        value -> {
          Matcher match = DURATION.matcher(value instanceof String text ? text : "");
          if (!match.matches()) {
            return null;
          }
          Duration time = Duration.of(Long.parseLong(match.group(1)), unit(match.group(2)));
          return time.compareTo(low) >= 0 && time.compareTo(high) <= 0 ? time : null;
        });
  }

  /** One word of a list; in the file a constant is written {@code like-this}. */
  static <E extends Enum<E>> Kind<E> choice(Class<E> type) {
    List<E> constants = Arrays.asList(type.getEnumConstants());
    return new Kind<>(
        "be one of " + constants.stream().map(Kind::word).collect(Collectors.joining(", ")),
        constants.get(0),
        value ->
            constants.stream()
                .filter(constant -> word(constant).equals(value))
                .findFirst()
                .orElse(null));
  }

  /** One word of a list, the first of which stands in. */
  static Kind<String> word(Collection<String> words) {
    return new Kind<>(
        "be one of " + String.join(", ", words),
        words.iterator().next(),
        value -> value instanceof String word && words.contains(word) ? word : null);
  }

  /** A text of a certain form. */
  static Kind<String> pattern(String regex, String must) {
    return new Kind<>(
        must, "?", value -> value instanceof String text && text.matches(regex) ? text : null);
  }

  /** Several texts of a certain form. */
  static Kind<List<String>> patterns(String regex, String must) {
    return new Kind<>(
        must,
        List.of(),
        value ->
            value instanceof TomlArray array ? each(array, pattern(regex, must).read()) : null);
  }

  /** The address of a part on a bus, written {@code 0x44}. */
  static Kind<Integer> address(int low, int high) {
    return new Kind<>(
        String.format(Locale.ROOT, "be an address from 0x%02X to 0x%02X", low, high),
        low,
        whole(low, high).read());
  }

  /** Returns how a constant is written in a file: lower case, with hyphens. */
  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Returns thousandths as a person writes them, without needless zeros. */
  static String plain(int thousandths) {
    return BigDecimal.valueOf(thousandths, 3).stripTrailingZeros().toPlainString();
  }

  private static String brief(Duration time) {
    long seconds = time.toSeconds();
    if (seconds > 0 && seconds % 86_400 == 0) {
      return seconds / 86_400 + "d";
    }
    if (seconds > 0 && seconds % 3_600 == 0) {
      return seconds / 3_600 + "h";
    }
    return seconds > 0 && seconds % 60 == 0 ? seconds / 60 + "m" : seconds + "s";
  }

  private static ChronoUnit unit(String letter) {
    return switch (letter) {
      case "s" -> ChronoUnit.SECONDS;
      case "m" -> ChronoUnit.MINUTES;
      case "h" -> ChronoUnit.HOURS;
      default -> ChronoUnit.DAYS;
    };
  }

  private static @Nullable Integer inThousandths(Object value, int low, int high) {
    if (!(value instanceof Long || value instanceof Double d && Double.isFinite(d))) {
      return null;
    }
    BigDecimal exact = new BigDecimal(value.toString()).movePointRight(3);
    if (exact.compareTo(BigDecimal.valueOf(low)) < 0
        || exact.compareTo(BigDecimal.valueOf(high)) > 0) {
      return null;
    }
    return exact.setScale(0, RoundingMode.HALF_UP).intValueExact();
  }

  private static <T> @Nullable List<T> each(TomlArray array, Function<Object, @Nullable T> read) {
    List<T> all = new ArrayList<>();
    for (int i = 0; i < array.size(); i++) {
      T one = read.apply(array.get(i));
      if (one == null) {
        return null;
      }
      all.add(one);
    }
    return List.copyOf(all);
  }
}
