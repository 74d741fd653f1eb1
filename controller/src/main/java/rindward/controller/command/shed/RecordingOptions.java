package rindward.controller.command.shed;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import rindward.controller.command.base.Units;
import rindward.controller.exchange.Columns;
import rindward.controller.exchange.RecordingFormat;
import rindward.controller.exchange.RowFilter;
import rindward.controller.exchange.TimeFormat;

/** The options that say how a logger wrote its file. */
final class RecordingOptions {
  @Option(
      names = "--columns",
      paramLabel = "COLUMNS",
      defaultValue = "time=1,temperature=2,humidity=3",
      description =
          "Columns by number from 1 or by header name, humidity if there is one; if not given"
              + " ${DEFAULT-VALUE}.")
  private String columns = "";

  @Option(
      names = "--where",
      paramLabel = "COLUMN=VALUE",
      description = "Use only the rows with this value in this column, such as one probe's.")
  private List<String> where = List.of();

  @Option(
      names = "--time",
      paramLabel = "FORMAT",
      defaultValue = "iso",
      description =
          "epoch-millis, epoch-seconds, iso, or a date pattern such as 'dd.MM.yyyy HH:mm:ss'; if"
              + " not given ${DEFAULT-VALUE}.")
  private String time = "";

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      defaultValue = "UTC",
      description =
          "Time zone of local times, such as Europe/London; if not given ${DEFAULT-VALUE}.")
  private String zone = "";

  @Option(
      names = "--delimiter",
      paramLabel = "CHARACTER",
      description =
          "What stands between fields: one character, or tab; if not given a comma, or a"
              + " semicolon with --decimal-comma.")
  private @Nullable String delimiter;

  @Option(names = "--decimal-comma", description = "Numbers are written 20,5.")
  private boolean decimalComma;

  /**
   * Returns the format these options describe.
   *
   * @throws IllegalArgumentException with one sentence about the option that is wrong
   */
  RecordingFormat format(Units units) {
    return new RecordingFormat(
        Columns.parse(columns),
        where.stream().map(RowFilter::parse).toList(),
        TimeFormat.of(time, zone()),
        delimiter(),
        decimalComma,
        units == Units.US);
  }

  /** Returns the zone of local times, in which people are told times as well. */
  ZoneId zone() {
    try {
      return ZoneId.of(zone);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException(
          "--zone was '" + zone + "' but it must be a time zone such as UTC or Europe/London", e);
    }
  }

  private char delimiter() {
    if (delimiter == null) {
      return decimalComma ? ';' : ',';
    }
    String character = delimiter.equals("tab") ? "\t" : delimiter;
    if (character.length() != 1) {
      throw new IllegalArgumentException(
          "--delimiter was '" + delimiter + "' but it must be one character, or tab");
    }
    return character.charAt(0);
  }
}
