package rindward.hardware.shed;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneOffset;

/**
 * The weather year of an EPW file, used for every year: after 31 December comes the file's 1
 * January, and 29 February is 28 February again. Time is the file's fixed offset from UTC, without
 * daylight saving. A row is stamped with the end of its hour: temperature, dew point, pressure and
 * wind are taken as of that moment and the sun as the mean of the hour, each joined by straight
 * lines. Immutable.
 */
public final class EpwWeather implements Weather {
  static final int HOURS = 8760;
  private static final int FEBRUARY_29 = 60;
  private static final double MONTH_HOURS = HOURS / 12.0;

  private final EpwYear year;

  private EpwWeather(EpwYear year) {
    this.year = year;
  }

  /**
   * Reads a file.
   *
   * @throws IOException naming file and line when it is not an EPW file of one whole year
   */
  public static EpwWeather read(Path path) throws IOException {
    return new EpwWeather(EpwReader.read(path));
  }

  /** Returns the place that the file names. */
  public String place() {
    return year.place();
  }

  @Override
  public OutdoorAir at(long epochSeconds) {
    double hours = hourOfYear(epochSeconds);
    double row = hours - 1;
    return new OutdoorAir(
        at(year.temperatureC(), row),
        at(year.vapourPa(), row),
        at(year.pressurePa(), row),
        at(year.windMPerS(), row),
        at(year.globalHorizontalWPerM2(), hours - 0.5),
        at(year.monthlyGroundC(), hours / MONTH_HOURS - 0.5));
  }

  private double hourOfYear(long epochSeconds) {
    long local = epochSeconds + year.utcOffsetSeconds();
    LocalDateTime date = LocalDateTime.ofEpochSecond(local, 0, ZoneOffset.UTC);
    int day = date.getDayOfYear();
    if (date.toLocalDate().isLeapYear() && day >= FEBRUARY_29) {
      day--;
    }
    return (day - 1) * 24 + date.toLocalTime().toSecondOfDay() / 3600.0;
  }

  /** Interpolates in a table that goes round. */
  private static double at(double[] table, double position) {
    int floor = (int) Math.floor(position);
    double share = position - floor;
    double before = table[Math.floorMod(floor, table.length)];
    double after = table[Math.floorMod(floor + 1, table.length)];
    return before + share * (after - before);
  }
}
