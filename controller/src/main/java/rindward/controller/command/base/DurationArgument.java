package rindward.controller.command.base;

import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads {@code 90s}, {@code 5m} or {@code 2h}; above zero, a year at most. */
public final class DurationArgument implements ITypeConverter<Duration> {
  private static final Pattern FORM = Pattern.compile("(\\d{1,9})([smh])");
  private static final Map<String, Duration> UNITS =
      Map.of("s", Duration.ofSeconds(1), "m", Duration.ofMinutes(1), "h", Duration.ofHours(1));
  private static final Duration LONGEST = Duration.ofDays(366);

  @Override
  public Duration convert(String text) {
    Matcher form = FORM.matcher(text);
    if (form.matches()) {
      Duration unit = UNITS.getOrDefault(form.group(2), Duration.ZERO);
      Duration duration = unit.multipliedBy(Long.parseLong(form.group(1)));
      if (!duration.isZero() && duration.compareTo(LONGEST) <= 0) {
        return duration;
      }
    }
    throw new TypeConversionException(
        "'"
            + text
            + "' must be a time above zero in seconds, minutes or hours, such as 90s, 5m, 2h");
  }
}
