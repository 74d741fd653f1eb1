package rindward.hardware.sensor;

import java.io.IOException;
import java.util.Locale;

/**
 * The trim values that a BME280 carries, and the arithmetic that turns its raw codes into air: the
 * double-precision form of Bosch's data sheet BST-BME280-DS002 rev. 1.6. Pressure is left out; no
 * room is controlled by it.
 *
 * @param t1 0..65535; the others are signed
 */
public record Bme280Calibration(
    int t1, int t2, int t3, int h1, int h2, int h3, int h4, int h5, int h6) {
  /** Register where the first block begins. */
  public static final int FIRST_REGISTER = 0x88;

  /** Bytes of the first block, 0x88..0xA1. */
  public static final int FIRST_BYTES = 26;

  /** Register where the second block begins. */
  public static final int SECOND_REGISTER = 0xE1;

  /** Bytes of the second block, 0xE1..0xE7. */
  public static final int SECOND_BYTES = 7;

  /**
   * Reads both blocks.
   *
   * @throws IOException when they are blank, as a bus that is held low or high shows them
   */
  public static Bme280Calibration parse(byte[] first, byte[] second) throws IOException {
    int t1 = unsigned16(first, 0);
    if (t1 == 0 || t1 == 0xFFFF) {
      throw new IOException(
          String.format(
              Locale.ROOT, "its first trim value was 0x%04X but it must not be blank", t1));
    }
    return new Bme280Calibration(
        t1,
        signed16(first, 2),
        signed16(first, 4),
        first[0xA1 - FIRST_REGISTER] & 0xFF,
        signed16(second, 0),
        second[2] & 0xFF,
        second[3] << 4 | (second[4] & 0x0F),
        second[5] << 4 | (second[4] >> 4 & 0x0F),
        second[6]);
  }

  /** Returns degrees C for a raw code of 20 bits. */
  public double temperatureC(int adcT) {
    return fineTemperature(adcT) / 5120;
  }

  /** Returns percent of saturation, 0..100, for a raw code of 16 bits and that of temperature. */
  public double humidityPct(int adcH, int adcT) {
    double fine = fineTemperature(adcT) - 76800;
    double code = adcH - (h4 * 64.0 + h5 / 16384.0 * fine);
    double slope = 1 + h6 / 67108864.0 * fine * (1 + h3 / 67108864.0 * fine);
    double linear = code * (h2 / 65536.0) * slope;
    double pct = linear * (1 - h1 * linear / 524288.0);
    return Math.max(0, Math.min(100, pct));
  }

  /** Returns the "fine" temperature of the data sheet, 1/5120 of a degree C. */
  private double fineTemperature(int adcT) {
    double linear = (adcT / 16384.0 - t1 / 1024.0) * t2;
    double half = adcT / 131072.0 - t1 / 8192.0;
    return linear + half * half * t3;
  }

  private static int unsigned16(byte[] bytes, int from) {
    return (bytes[from + 1] & 0xFF) << 8 | (bytes[from] & 0xFF);
  }

  private static int signed16(byte[] bytes, int from) {
    return bytes[from + 1] << 8 | (bytes[from] & 0xFF);
  }
}
