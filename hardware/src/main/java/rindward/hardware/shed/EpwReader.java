package rindward.hardware.shed;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Reads an EPW file as the format's documentation (EnergyPlus Auxiliary Programs, "EPW CSV format")
 * describes it: eight header lines, then 8760 hourly rows; the 24 rows of a 29 February are left
 * out. Values marked as missing are bridged by a straight line between their neighbours.
 */
final class EpwReader {
  private static final int HEADER_LINES = 8;
  private static final double DEEPEST_GROUND_M = 2;
  private static final LocalDateTime COMMON_YEAR = LocalDateTime.of(2001, 1, 1, 0, 0);

  private final Path path;
  private final List<String> lines;
  private final Map<EpwColumn, double[]> columns = new EnumMap<>(EpwColumn.class);

  private EpwReader(Path path, List<String> lines) {
    this.path = path;
    this.lines = lines;
    for (EpwColumn column : EpwColumn.values()) {
      columns.put(column, new double[EpwWeather.HOURS]);
    }
  }

  static EpwYear read(Path path) throws IOException {
    try {
      return new EpwReader(path, Files.readAllLines(path, StandardCharsets.ISO_8859_1)).read();
    } catch (NoSuchFileException e) {
      throw new IOException("weather file was '" + path + "' but there is no such file", e);
    }
  }

  private EpwYear read() throws IOException {
    String[] location = header(1, "LOCATION");
    if (location.length < 10) {
      throw problem(1, "LOCATION", String.join(",", location), "have 10 fields");
    }
    double offsetHours = number(1, "time zone", location[8]);
    readRows();
    double[] temperatureC = bridged(EpwColumn.TEMPERATURE);
    return new EpwYear(
        location[1],
        (int) Math.round(offsetHours * 3600),
        temperatureC,
        vapourPa(temperatureC),
        bridged(EpwColumn.PRESSURE),
        bridged(EpwColumn.WIND),
        bridged(EpwColumn.SUN),
        monthlyGroundC(temperatureC));
  }

  private double[] column(EpwColumn column) {
    return Objects.requireNonNull(columns.get(column));
  }

  private String[] header(int line, String word) throws IOException {
    String text = lines.size() < line ? "" : lines.get(line - 1);
    String[] fields = text.split(",", -1);
    if (!fields[0].strip().equalsIgnoreCase(word)) {
      throw problem(line, "first field", fields[0], "be " + word + " in an EPW file");
    }
    return fields;
  }

  private void readRows() throws IOException {
    int row = 0;
    for (int i = HEADER_LINES; i < lines.size(); i++) {
      if (lines.get(i).isBlank()) {
        continue;
      }
      String[] fields = lines.get(i).split(",", -1);
      if (fields.length <= EpwColumn.WIND.index) {
        throw problem(i + 1, "row", lines.get(i), "have 22 fields or more");
      }
      if (fields[1].strip().equals("2") && fields[2].strip().equals("29")) {
        continue;
      }
      if (row == EpwWeather.HOURS) {
        throw problem(i + 1, "row", lines.get(i), "be the end: a year has 8760 hours");
      }
      checkStamp(i + 1, row, fields);
      for (EpwColumn column : EpwColumn.values()) {
        column(column)[row] = value(i + 1, column, fields[column.index]);
      }
      row++;
    }
    if (row < EpwWeather.HOURS) {
      throw problem(lines.size(), "last hour of the year", row + "", "be 8760");
    }
  }

  private void checkStamp(int line, int row, String[] fields) throws IOException {
    LocalDateTime due = COMMON_YEAR.plusHours(row);
    String expected = due.getMonthValue() + "," + due.getDayOfMonth() + "," + (due.getHour() + 1);
    String found = fields[1].strip() + "," + fields[2].strip() + "," + fields[3].strip();
    if (!found.equals(expected)) {
      throw problem(line, "month,day,hour", found, "be " + expected);
    }
  }

  private double value(int line, EpwColumn column, String text) throws IOException {
    double value = number(line, column.title, text);
    if (column.isMissing(value)) {
      return Double.NaN;
    }
    if (!column.holds(value)) {
      throw problem(line, column.title, text, "be " + column.range());
    }
    return value;
  }

  private double number(int line, String what, String text) throws IOException {
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException e) {
      throw problem(line, what, text, "be a number");
    }
  }

  // Stations refer humidity to liquid water in frost too.
  private double[] vapourPa(double[] temperatureC) throws IOException {
    double[] dewPointC = column(EpwColumn.DEW_POINT);
    double[] humidityPct = column(EpwColumn.HUMIDITY);
    double[] vapourPa = new double[EpwWeather.HOURS];
    for (int i = 0; i < vapourPa.length; i++) {
      vapourPa[i] =
          Double.isNaN(dewPointC[i])
              ? humidityPct[i] / 100 * Water.overLiquidPa(temperatureC[i])
              : Water.overLiquidPa(dewPointC[i]);
    }
    return bridge(vapourPa, "dew point and humidity");
  }

  private double[] monthlyGroundC(double[] temperatureC) throws IOException {
    double[] ground = new double[12];
    Arrays.fill(ground, Arrays.stream(temperatureC).average().orElseThrow());
    String[] fields = header(4, "GROUND TEMPERATURES");
    double depthM = 0;
    for (int at = 2; at + 16 <= fields.length; at += 16) {
      double thisM = number(4, "depth", fields[at]);
      if (thisM > depthM && thisM <= DEEPEST_GROUND_M) {
        depthM = thisM;
        for (int month = 0; month < 12; month++) {
          ground[month] = number(4, "ground temperature", fields[at + 4 + month]);
        }
      }
    }
    return ground;
  }

  private double[] bridged(EpwColumn column) throws IOException {
    return bridge(column(column), column.title);
  }

  /** Fills gaps with a straight line between what stands around them; the year goes round. */
  private double[] bridge(double[] values, String what) throws IOException {
    int n = values.length;
    double[] filled = values.clone();
    for (int i = 0; i < n; i++) {
      if (Double.isNaN(values[i])) {
        int back = 1;
        while (back < n && Double.isNaN(values[Math.floorMod(i - back, n)])) {
          back++;
        }
        int ahead = 1;
        while (ahead < n && Double.isNaN(values[(i + ahead) % n])) {
          ahead++;
        }
        if (back == n) {
          throw new IOException(
              path + ": " + what + " was missing in every row but it must be there");
        }
        double before = values[Math.floorMod(i - back, n)];
        double after = values[(i + ahead) % n];
        filled[i] = before + (after - before) * back / (back + ahead);
      }
    }
    return filled;
  }

  private IOException problem(int line, String what, String found, String must) {
    return new IOException(
        path + ":" + line + ": " + what + " was '" + found + "' but it must " + must);
  }
}
