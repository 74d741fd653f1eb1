package rindward.hardware.sensor;

import java.io.IOException;
import rindward.hardware.Reading;

/**
 * The raw codes of one measurement of a BME280.
 *
 * @param adcT temperature, 20 bits
 * @param adcH humidity, 16 bits
 */
public record Bme280Sample(int adcT, int adcH) {
  /** Register where the burst of pressure, temperature and humidity begins. */
  public static final int REGISTER = 0xF7;

  /** Bytes of the burst, 0xF7..0xFE. */
  public static final int BYTES = 8;

  private static final int SKIPPED_T = 0x80000;
  private static final int SKIPPED_H = 0x8000;
  private static final int ALL_ONES_T = 0xFFFFF;
  private static final double LOWEST_C = -40;
  private static final double HIGHEST_C = 85;

  /** Reads the burst; pressure is passed over. */
  public static Bme280Sample parse(byte[] burst) {
    return new Bme280Sample(
        (burst[3] & 0xFF) << 12 | (burst[4] & 0xFF) << 4 | (burst[5] & 0xFF) >> 4,
        (burst[6] & 0xFF) << 8 | (burst[7] & 0xFF));
  }

  /**
   * Returns what the codes say.
   *
   * @throws IOException when nothing was measured: the codes of a channel that was off decode to a
   *     believable 26 C and 64 %, so they are known by the code and not by the value
   */
  public Reading reading(Bme280Calibration calibration) throws IOException {
    if (adcT == SKIPPED_T || adcH == SKIPPED_H) {
      throw new IOException("it measured nothing; it may have lost power for a moment");
    }
    if (adcT == ALL_ONES_T || adcT == 0) {
      throw new IOException("all its bits were the same; check the wire");
    }
    return OperatingRange.reading(
        calibration.temperatureC(adcT), calibration.humidityPct(adcH, adcT), LOWEST_C, HIGHEST_C);
  }
}
