package rindward.controller.command.shed;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.Year;
import java.time.format.DateTimeParseException;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rindward.controller.settings.Settings;
import rindward.hardware.shed.EpwWeather;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.Weather;

/** Which weeks of which weather a season lives through. */
final class SeasonOptions {
  @Option(
      names = "--weather",
      paramLabel = "FILE.epw",
      description =
          "A year of weather in the EPW format; if not given, weather is made up from the settings'"
              + " seed.")
  private @Nullable Path weather;

  @Option(
      names = "--from",
      paramLabel = "MM-DD",
      converter = DayArgument.class,
      defaultValue = "09-20",
      description = "The first day, by the site's time zone; if not given ${DEFAULT-VALUE}.")
  private MonthDay from = MonthDay.of(9, 20);

  @Option(
      names = "--days",
      paramLabel = "N",
      defaultValue = "180",
      description = "How many days, 1 to 730; if not given ${DEFAULT-VALUE}.")
  private int days = 180;

  /** Reads {@code 09-20}. */
  static final class DayArgument implements ITypeConverter<MonthDay> {
    @Override
    public MonthDay convert(String text) {
      try {
        return MonthDay.parse("--" + text);
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + text + "' must be a day such as 09-20, month first");
      }
    }
  }

  int days() {
    return days;
  }

  /** Returns what is wrong with the options, in one sentence; null if nothing is. */
  @Nullable String refusal() {
    return days >= 1 && days <= 730 ? null : "--days was '" + days + "' but it must be 1 to 730";
  }

  /**
   * Returns the weather.
   *
   * @throws IOException naming file and line when it is not an EPW file
   */
  Weather weather(Settings settings) throws IOException {
    return weather == null
        ? GeneratedWeather.temperate(settings.simulation().seed())
        : EpwWeather.read(weather);
  }

  /** Returns when the season begins: the last such day that is a whole season ago. */
  Instant from(Settings settings, Instant now) {
    int thisYear = Year.from(now.atZone(settings.zone())).getValue();
    LocalDate day = from.atYear(thisYear);
    while (day.plusDays(days).isAfter(now.atZone(settings.zone()).toLocalDate())) {
      day = from.atYear(day.getYear() - 1);
    }
    return day.atStartOfDay(settings.zone()).toInstant();
  }
}
