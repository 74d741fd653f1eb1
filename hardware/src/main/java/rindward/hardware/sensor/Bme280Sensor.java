package rindward.hardware.sensor;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;

/**
 * Speaks with a BME280: forced mode, temperature and humidity oversampled once, pressure off,
 * filter off (Bosch BST-BME280-DS002 rev. 1.6). The part sends no checksums, so what matters is
 * read twice and must be the same; it sleeps between measurements, when its registers stand still.
 */
final class Bme280Sensor implements I2cSensor {
  private static final int CHIP_ID = 0xD0;
  private static final int RESET = 0xE0;
  private static final int CONTROL_HUMIDITY = 0xF2;
  private static final int STATUS = 0xF3;
  private static final int CONTROL_MEASURE = 0xF4;
  private static final int CONFIG = 0xF5;

  private static final int BME280 = 0x60;
  private static final int RESET_WORD = 0xB6;
  private static final int ONCE = 1;
  private static final int NO_FILTER = 0;
  private static final int TEMPERATURE_ONCE_PRESSURE_OFF_FORCED = 1 << 5 | 1;

  /** Set while it measures. */
  private static final int MEASURING = 1 << 3;

  /** Set while it copies its trim values after a reset. */
  private static final int COPYING = 1;

  /** Start-up, 2 ms at most. */
  private static final int RESET_MILLIS = 3;

  /** 1.25 + 2.3 for temperature + 2.3 + 0.575 for humidity, at most (from memory). */
  private static final int MEASURE_MILLIS = 7;

  /** How often a part that is late is asked again. */
  private static final int PATIENCE = 5;

  private @Nullable Bme280Calibration calibration;

  @Override
  public void prepare(I2cDevice device, Pause pause) throws IOException {
    calibration = null;
    int id = readTwice(device, CHIP_ID, 1)[0] & 0xFF;
    if (id != BME280) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "its chip id was 0x%02X but a BME280 says 0x60%s",
              id,
              id == 0x58 ? " (this is a BMP280, which has no humidity)" : ""));
    }
    device.write((byte) RESET, (byte) RESET_WORD);
    pause.millis(RESET_MILLIS);
    await(device, pause, COPYING);
    calibration =
        Bme280Calibration.parse(
            readTwice(device, Bme280Calibration.FIRST_REGISTER, Bme280Calibration.FIRST_BYTES),
            readTwice(device, Bme280Calibration.SECOND_REGISTER, Bme280Calibration.SECOND_BYTES));
    device.write((byte) CONFIG, (byte) NO_FILTER);
    device.write((byte) CONTROL_HUMIDITY, (byte) ONCE);
  }

  @Override
  public Reading measure(I2cDevice device, Pause pause) throws IOException {
    if (calibration == null) {
      throw new IllegalStateException("measured before it was prepared");
    }
    if (read(device, CONTROL_HUMIDITY, 1)[0] != ONCE) {
      // Another part may hang there now, whose trim values are not these.
      throw new IOException("it has lost its settings; it was without power or exchanged");
    }
    device.write((byte) CONTROL_MEASURE, (byte) TEMPERATURE_ONCE_PRESSURE_OFF_FORCED);
    pause.millis(MEASURE_MILLIS);
    await(device, pause, MEASURING);
    byte[] burst = readTwice(device, Bme280Sample.REGISTER, Bme280Sample.BYTES);
    return Bme280Sample.parse(burst).reading(calibration);
  }

  private static void await(I2cDevice device, Pause pause, int bit) throws IOException {
    for (int i = 0; i < PATIENCE; i++) {
      if ((read(device, STATUS, 1)[0] & bit) == 0) {
        return;
      }
      pause.millis(RESET_MILLIS);
    }
    throw new IOException("it stays busy");
  }

  private static byte[] readTwice(I2cDevice device, int register, int count) throws IOException {
    byte[] first = read(device, register, count);
    if (!Arrays.equals(first, read(device, register, count))) {
      throw new IOException("it gave two different answers; check the wire");
    }
    return first;
  }

  private static byte[] read(I2cDevice device, int register, int count) throws IOException {
    device.write((byte) register);
    return device.read(count);
  }
}
