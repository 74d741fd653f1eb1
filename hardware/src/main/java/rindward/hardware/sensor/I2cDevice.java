package rindward.hardware.sensor;

import java.io.IOException;

/** One device on a bus. For the one thread that works the bus. */
public interface I2cDevice {
  /** Returns where it is, for a sentence: "0x44 on I2C bus 1". */
  String place();

  /**
   * Sends bytes in one transfer.
   *
   * @throws IOException when the device does not take them
   */
  void write(byte... bytes) throws IOException;

  /**
   * Fetches {@code count} bytes in one transfer.
   *
   * @throws IOException when the device does not answer, or with fewer bytes
   */
  byte[] read(int count) throws IOException;

  /**
   * Lets go of the bus and takes hold of it again at the next transfer: the last means after
   * repeated errors.
   */
  void reopen();
}
