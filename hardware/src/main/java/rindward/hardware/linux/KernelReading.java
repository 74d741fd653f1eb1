package rindward.hardware.linux;

import java.io.IOException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;
import rindward.hardware.sensor.OperatingRange;

/**
 * Turns what a kernel driver says, thousandths of a degree C and of a percent, into a reading. Most
 * drivers do not judge: one of an SHT4x may say -6 to 119 %.
 */
final class KernelReading {
  private static final double LOWEST_C = -55;
  private static final double HIGHEST_C = 125;

  /**
   * Below this no room is, and a driver known to count in whole percent instead of thousandths (a
   * BME680's did) says values of this size. Taking them for percent would make a believable 50 % of
   * a broken sensor's 0.05 %, so they are refused.
   */
  private static final double LOWEST_PCT = 1;

  /** The end of the scale of an SHT4x. */
  private static final double HIGHEST_PCT = 119;

  private KernelReading() {}

  /**
   * Returns the reading.
   *
   * @param humidityMilliPct null for a device without humidity
   * @throws IOException when a value is not one of a room
   */
  static Reading of(double temperatureMilliC, @Nullable Double humidityMilliPct)
      throws IOException {
    double temperatureC = OperatingRange.requireC(temperatureMilliC / 1000, LOWEST_C, HIGHEST_C);
    if (humidityMilliPct == null) {
      return Reading.ofTemperature(temperatureC);
    }
    double humidityPct = humidityMilliPct / 1000;
    if (humidityPct < LOWEST_PCT || humidityPct > HIGHEST_PCT) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "its humidity was %.3f %% but it must be %.0f to 100 %%",
              humidityPct,
              LOWEST_PCT));
    }
    return Reading.of(temperatureC, Math.min(100, humidityPct));
  }
}
