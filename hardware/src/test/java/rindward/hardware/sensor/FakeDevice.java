package rindward.hardware.sensor;

import java.io.IOException;

/** A device that can be unplugged, and that counts how often its bus was opened again. */
abstract class FakeDevice implements I2cDevice {
  boolean isUnplugged;
  int reopened;

  @Override
  public String place() {
    return "0x44 on I2C bus 1";
  }

  @Override
  public final void write(byte... bytes) throws IOException {
    requirePlugged();
    take(bytes);
  }

  @Override
  public final byte[] read(int count) throws IOException {
    requirePlugged();
    return give(count);
  }

  @Override
  public void reopen() {
    reopened++;
  }

  abstract void take(byte[] bytes) throws IOException;

  abstract byte[] give(int count) throws IOException;

  private void requirePlugged() throws IOException {
    if (isUnplugged) {
      throw new IOException("it does not answer");
    }
  }
}
