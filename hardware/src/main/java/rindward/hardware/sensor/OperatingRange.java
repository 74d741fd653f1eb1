package rindward.hardware.sensor;

import java.io.IOException;
import java.util.Locale;
import rindward.hardware.Reading;

/** Turns away what a part cannot have measured because it does not work there. */
public final class OperatingRange {
  private OperatingRange() {}

  /**
   * Returns the temperature if the part works at it.
   *
   * @throws IOException when it does not
   */
  public static double requireC(double temperatureC, double lowestC, double highestC)
      throws IOException {
    if (temperatureC >= lowestC && temperatureC <= highestC) {
      return temperatureC;
    }
    throw new IOException(
        String.format(
            Locale.ROOT,
            "it said %.2f C but it works from %.0f to %.0f C only",
            temperatureC,
            lowestC,
            highestC));
  }

  /**
   * Returns the reading if the part works at its temperature.
   *
   * @throws IOException when it does not
   */
  static Reading reading(double temperatureC, double humidityPct, double lowestC, double highestC)
      throws IOException {
    return Reading.of(requireC(temperatureC, lowestC, highestC), humidityPct);
  }
}
