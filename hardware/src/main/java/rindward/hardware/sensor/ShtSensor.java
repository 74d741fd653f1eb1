package rindward.hardware.sensor;

import java.io.IOException;
import rindward.hardware.Reading;

/**
 * Speaks with the SHT3x and SHT4x families: one measurement at a time, at the highest
 * repeatability. The heater is never switched on. One that another program left on warms the part
 * and dries the air it sees, so the soft reset at the start ends it, and an SHT3x, which can tell,
 * is asked whether it did; an SHT4x ends its own within a second.
 */
final class ShtSensor implements I2cSensor {
  /** Soft reset, 1.5 ms at most for an SHT3x, 1 ms for an SHT4x (from memory). */
  private static final int RESET_MILLIS = 2;

  /** An SHT3x wants 1 ms between two commands (data sheet SHT3x-DIS v5, section 4). */
  private static final int BETWEEN_COMMANDS_MILLIS = 1;

  private static final int SHT3X_HEATER_OFF = 0x3066;
  private static final int SHT3X_STATUS = 0xF32D;
  private static final int STATUS_BYTES = 3;
  private static final int HEATER_ON_BIT = 1 << 13;

  private final ShtFamily family;

  ShtSensor(ShtFamily family) {
    this.family = family;
  }

  @Override
  public void prepare(I2cDevice device, Pause pause) throws IOException {
    device.write(family.resetCommand());
    pause.millis(RESET_MILLIS);
    if (family == ShtFamily.SHT3X) {
      device.write(family.command(SHT3X_HEATER_OFF));
      pause.millis(BETWEEN_COMMANDS_MILLIS);
      device.write(family.command(SHT3X_STATUS));
      if ((SensirionFrame.word("status", device.read(STATUS_BYTES), 0) & HEATER_ON_BIT) != 0) {
        throw new IOException("its heater is on and does not go off");
      }
      pause.millis(BETWEEN_COMMANDS_MILLIS);
    }
  }

  @Override
  public Reading measure(I2cDevice device, Pause pause) throws IOException {
    device.write(family.measureCommand());
    pause.millis(family.measureMillis());
    return family.reading(SensirionFrame.parse(device.read(SensirionFrame.BYTES)));
  }
}
