package rindward.hardware.sensor;

import java.io.IOException;
import java.util.Locale;

/**
 * A multiplexer of the TCA9548A kind: eight channels behind one address, so that several sensors of
 * one fixed address can hang on one bus (data sheet TCA9548A, SCPS207F, section 8.5.4: one control
 * register, one bit a channel, none chosen after power-up).
 *
 * <p>The channel is chosen only when another one is wanted than the one chosen last, and read back;
 * after any error what was chosen is forgotten. For the one thread that works the bus: choosing and
 * talking are two transfers that nothing may come between.
 */
public final class I2cMultiplexer {
  /** Channels 0 to 7. */
  public static final int CHANNELS = 8;

  private static final int UNKNOWN = -1;

  private final I2cBus upstream;
  private final I2cDevice control;
  private int chosen = UNKNOWN;

  /**
   * @param upstream the bus it hangs on
   * @param address 0x70..0x77
   * @throws IOException when the bus cannot be opened
   */
  public I2cMultiplexer(I2cBus upstream, int address) throws IOException {
    this.upstream = upstream;
    this.control = upstream.device(address);
  }

  /**
   * Returns one channel as a bus of its own.
   *
   * @param channel 0..7
   */
  public I2cBus channel(int channel) {
    if (channel < 0 || channel >= CHANNELS) {
      throw new IllegalArgumentException(
          "channel was " + channel + " but it must be 0 to " + (CHANNELS - 1));
    }
    return address -> new Behind(upstream.device(address), channel);
  }

  private void choose(int channel) throws IOException {
    if (chosen == channel) {
      return;
    }
    chosen = UNKNOWN;
    byte bit = (byte) (1 << channel);
    control.write(bit);
    byte answer = control.read(1)[0];
    if (answer != bit) {
      throw new IOException(
          String.format(
              Locale.ROOT,
              "the multiplexer at %s said 0x%02X but channel %d is 0x%02X",
              control.place(),
              answer & 0xFF,
              channel,
              bit & 0xFF));
    }
    chosen = channel;
  }

  /** A device behind one channel. */
  private final class Behind implements I2cDevice {
    private final I2cDevice device;
    private final int channel;

    Behind(I2cDevice device, int channel) {
      this.device = device;
      this.channel = channel;
    }

    @Override
    public String place() {
      return device.place() + ", channel " + channel;
    }

    @Override
    public void write(byte... bytes) throws IOException {
      choose(channel);
      try {
        device.write(bytes);
      } catch (IOException e) {
        chosen = UNKNOWN;
        throw e;
      }
    }

    @Override
    public byte[] read(int count) throws IOException {
      choose(channel);
      try {
        return device.read(count);
      } catch (IOException e) {
        chosen = UNKNOWN;
        throw e;
      }
    }

    @Override
    public void reopen() {
      chosen = UNKNOWN;
      device.reopen();
    }
  }
}
