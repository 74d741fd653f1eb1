package rindward.hardware.pi4j;

import com.pi4j.io.gpio.digital.DigitalOutput;
import java.io.IOException;
import rindward.hardware.Relay;

/**
 * A relay on one GPIO line. Thread-safe, so that whoever stops the board can switch it off while
 * the control loop is in the middle of something; once closed it stays off. The line is driven, not
 * read back: what the contact does, software here cannot see.
 */
final class GpioRelay implements Relay {
  private final String name;
  private final int gpio;
  private final DigitalOutput line;
  private final ActiveLevel activeLevel;
  private boolean isClosed;

  GpioRelay(String name, int gpio, DigitalOutput line, ActiveLevel activeLevel) {
    this.name = name;
    this.gpio = gpio;
    this.line = line;
    this.activeLevel = activeLevel;
  }

  @Override
  public String name() {
    return name;
  }

  int gpio() {
    return gpio;
  }

  @Override
  public synchronized void set(boolean on) throws IOException {
    if (isClosed) {
      if (on) {
        throw new IOException("relay " + name + " stays off: its board is closed");
      }
      return;
    }
    drive(on);
  }

  /** Switches off for good. */
  synchronized void close() throws IOException {
    if (!isClosed) {
      isClosed = true;
      drive(false);
    }
  }

  private void drive(boolean on) throws IOException {
    try {
      line.state(activeLevel.state(on));
    } catch (RuntimeException e) {
      throw new IOException(
          "relay "
              + name
              + " on GPIO "
              + gpio
              + " could not be switched "
              + (on ? "on" : "off")
              + ": "
              + Causes.sentence(e),
          e);
    }
  }
}
