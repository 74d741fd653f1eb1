package rindward.hardware.sensor;

import java.io.IOException;

/**
 * A bus, or one channel of it behind a multiplexer, and the devices on it. All devices of one bus,
 * through whatever channels, belong to one worker thread: nothing here locks, and a conversion is
 * waited for between a write and its read.
 */
public interface I2cBus {
  /**
   * Returns the device at an address; whether it answers shows when it is first spoken to.
   *
   * @param address 0x08..0x77
   * @throws IOException in one sentence, when the bus itself cannot be opened
   */
  I2cDevice device(int address) throws IOException;
}
