package rindward.controller.exchange;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;

/**
 * Dates and times as text, with an offset of their own or local to a zone.
 *
 * @param formatter what is read
 * @param zone where local times were taken
 * @param expected what a time must look like
 */
record DateTime(DateTimeFormatter formatter, ZoneId zone, String expected) implements TimeFormat {
  private static final DateTimeFormatter ISO =
      new DateTimeFormatterBuilder()
          .parseCaseInsensitive()
          .append(DateTimeFormatter.ISO_LOCAL_DATE)
          .appendPattern("['T'][' ']")
          .append(DateTimeFormatter.ISO_LOCAL_TIME)
          .optionalStart()
          .parseLenient()
          .appendOffsetId()
          .toFormatter(Locale.ROOT);

  static DateTime iso(ZoneId zone) {
    return new DateTime(ISO, zone, "an ISO date and time, such as 2026-10-01T12:00:00Z");
  }

  static DateTime ofPattern(String pattern, ZoneId zone) {
    try {
      return new DateTime(
          DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH),
          zone,
          "a date and time like " + pattern);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(
          "time format was '"
              + pattern
              + "' but it must be epoch-millis, epoch-seconds, iso, or a date pattern such as"
              + " 'dd.MM.yyyy HH:mm:ss'",
          e);
    }
  }

  @Override
  public long toMillis(String text, long previousMillis) {
    if (formatter == ISO && PlainInstant.fits(text)) {
      return PlainInstant.millis(text);
    }
    TemporalAccessor parsed = formatter.parseBest(text, ZonedDateTime::from, LocalDateTime::from);
    return parsed instanceof ZonedDateTime zoned
        ? zoned.toInstant().toEpochMilli()
        : localToMillis((LocalDateTime) parsed, previousMillis);
  }

  // In the hour that is repeated, a row is taken to be near the one before it; without one, the
  // first pass is meant. A local time that the clocks skipped counts as if they had not.
  private long localToMillis(LocalDateTime local, long previousMillis) {
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
    if (offsets.size() < 2) {
      return local.atZone(zone).toInstant().toEpochMilli();
    }
    long first = local.toInstant(offsets.get(0)).toEpochMilli();
    long second = local.toInstant(offsets.get(1)).toEpochMilli();
    boolean nearSecond =
        previousMillis != NO_ROW_BEFORE
            && Math.abs(second - previousMillis) < Math.abs(first - previousMillis);
    return nearSecond ? second : first;
  }
}
