package rindward.hardware.sensor;

import java.io.IOException;
import rindward.hardware.Reading;

/**
 * What tells the SHT3x family from the SHT4x family: commands, times and the scale of humidity.
 * After the data sheets SHT3x-DIS v5 (2018) and SHT4x v6 (2023). Times are the stated maxima,
 * rounded up to whole milliseconds.
 */
public enum ShtFamily {
  /** Single shot, high repeatability, no clock stretching; 15 ms at most. */
  SHT3X(2, 0x2400, 16, 0x30A2, 0, 100),

  /** High precision; 8.3 ms at most. */
  SHT4X(1, 0xFD, 9, 0x94, -6, 125);

  private static final double LOWEST_C = -40;
  private static final double HIGHEST_C = 125;
  private static final double FULL_SCALE = 65535;

  private final int commandBytes;
  private final int measure;
  private final int measureMillis;
  private final int reset;
  private final double humidityOffsetPct;
  private final double humiditySpanPct;

  ShtFamily(
      int commandBytes,
      int measure,
      int measureMillis,
      int reset,
      double humidityOffsetPct,
      double humiditySpanPct) {
    this.commandBytes = commandBytes;
    this.measure = measure;
    this.measureMillis = measureMillis;
    this.reset = reset;
    this.humidityOffsetPct = humidityOffsetPct;
    this.humiditySpanPct = humiditySpanPct;
  }

  /** Returns degrees C, -45..130. */
  public double temperatureC(int ticks) {
    return -45 + 175 * ticks / FULL_SCALE;
  }

  /** Returns percent, 0..100; what the scale says beyond that is cut off, as the maker asks. */
  public double humidityPct(int ticks) {
    double pct = humidityOffsetPct + humiditySpanPct * ticks / FULL_SCALE;
    return Math.max(0, Math.min(100, pct));
  }

  /**
   * Returns what a frame says.
   *
   * @throws IOException when it lies outside -40..125 C, where the part does not work
   */
  public Reading reading(SensirionFrame frame) throws IOException {
    return OperatingRange.reading(
        temperatureC(frame.temperatureTicks()),
        humidityPct(frame.humidityTicks()),
        LOWEST_C,
        HIGHEST_C);
  }

  int measureMillis() {
    return measureMillis;
  }

  byte[] measureCommand() {
    return command(measure);
  }

  byte[] resetCommand() {
    return command(reset);
  }

  /** Returns a command of this family as it goes over the wire, high byte first. */
  byte[] command(int code) {
    return commandBytes == 1
        ? new byte[] {(byte) code}
        : new byte[] {(byte) (code >> 8), (byte) code};
  }
}
