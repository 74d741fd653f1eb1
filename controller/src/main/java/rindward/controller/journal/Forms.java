package rindward.controller.journal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The forms of plain values: whole numbers, texts, times and days. */
final class Forms {
  private static final int MOST_DIGITS = 12;

  private Forms() {}

  static final Form<Integer> WHOLE =
      new Plain<>(
          Integer.class, "it must be a whole number", Integer.class::cast, Integer::valueOf) {};

  static final Form<Long> LONG =
      new Plain<>(
          Long.class,
          "it must be a whole number",
          plain -> ((Number) plain).longValue(),
          Long::valueOf) {};

  /** In the journal thousandths, as a text the decimal number that they stand for. */
  static final Form<Integer> THOUSANDTHS =
      new Plain<>(
          Integer.class,
          "it must be a number such as -1.5",
          Integer.class::cast,
          Forms::thousandths) {
        @Override
        String text(Integer value) {
          return BigDecimal.valueOf(value, 3).toPlainString();
        }

        @Override
        Object shown(Integer value) {
          return value / 1000.0;
        }
      };

  static final Form<Boolean> YES_NO =
      new Plain<>(Boolean.class, "it must be yes or no", Boolean.class::cast, Forms::yes) {
        @Override
        String text(Boolean value) {
          return value ? "yes" : "no";
        }
      };

  /** A text as it stands, blanks around it included. */
  static final Form<String> TEXT =
      new Plain<>(String.class, "it must be a text", Forms::oneOfEach, text -> text) {
        @Override
        @Nullable String fromText(String text, FieldTexts row) {
          return text;
        }

        @Override
        boolean isSaid(String text) {
          return !text.isEmpty();
        }
      };

  /** The code of a lot; people may write it in small letters. */
  static final Form<String> LOT =
      new Plain<>(
          String.class,
          "it must be the code of a lot",
          Forms::oneOfEach,
          text -> text.toUpperCase(Locale.ROOT)) {};

  /** The key of a type in the crop guide; people may call it by any of its names. */
  static final Form<String> CROP =
      new Plain<>(
          String.class, "it must be a type of the crop guide", Forms::oneOfEach, text -> text) {
        @Override
        @Nullable String fromText(String text, FieldTexts row) {
          return row.cropKey().apply(text.strip());
        }
      };

  static final Form<LocalDate> DAY =
      new Plain<>(
          LocalDate.class,
          "it must be a day such as 2026-10-03",
          plain -> LocalDate.parse((String) plain),
          LocalDate::parse) {
        @Override
        Object plain(LocalDate value) {
          return value.toString();
        }
      };

  /** In a row also a day, or a time of the row's zone. */
  static final Form<Instant> TIME =
      new Plain<>(
          Instant.class,
          "it must be a day or a time, such as 2026-10-03 or 2026-10-03T14:30",
          plain -> Instant.parse((String) plain),
          Instant::parse) {
        @Override
        Object plain(Instant value) {
          return value.toString();
        }

        @Override
        @Nullable Instant fromText(String text, FieldTexts row) {
          try {
            return time(text.strip(), row);
          } catch (DateTimeException e) {
            return null;
          }
        }
      };

  private static Instant time(String text, FieldTexts row) {
    if (text.endsWith("Z")) {
      return Instant.parse(text);
    }
    return text.indexOf('T') > 0
        ? LocalDateTime.parse(text).atZone(row.zone()).toInstant()
        : LocalDate.parse(text).atStartOfDay(row.zone()).toInstant();
  }

  /** Years of entries name the same few crops, places and people: one string of each will do. */
  private static String oneOfEach(Object plain) {
    return ((String) plain).intern();
  }

  private static Integer thousandths(String text) {
    if (text.length() > MOST_DIGITS) {
      throw new NumberFormatException(text);
    }
    return new BigDecimal(text).movePointRight(3).setScale(0, RoundingMode.HALF_UP).intValueExact();
  }

  private static Boolean yes(String text) {
    if (text.equals("yes") || text.equals("no")) {
      return text.equals("yes");
    }
    throw new NumberFormatException(text);
  }

  /** A value that is written in one piece. */
  private abstract static class Plain<T> extends Form<T> {
    private final Function<Object, T> fromPlain;
    private final Function<String, T> fromText;

    Plain(Class<T> type, String must, Function<Object, T> fromPlain, Function<String, T> fromText) {
      super(type, must);
      this.fromPlain = fromPlain;
      this.fromText = fromText;
    }

    @Override
    Object plain(T value) {
      return value;
    }

    @Override
    T fromPlain(Object plain, Understanding seen) {
      try {
        return fromPlain.apply(plain);
      } catch (ClassCastException | DateTimeException e) {
        throw new IllegalArgumentException("'" + plain + "' is no value of this version", e);
      }
    }

    @Override
    @Nullable T fromText(String text, FieldTexts row) {
      try {
        return fromText.apply(text.strip());
      } catch (DateTimeException | ArithmeticException | NumberFormatException e) {
        return null;
      }
    }
  }
}
