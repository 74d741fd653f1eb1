package rindward.hardware.wired;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.sensor.I2cBus;
import rindward.hardware.sensor.Pause;

/** What the machine has that parts hang on. Nothing of it is opened before it is asked for. */
public interface Machine extends AutoCloseable {
  /** Returns where the kernel shows its devices, usually {@code /sys}. */
  Path sysfs();

  /** Returns an I2C bus; whether it is there shows at the first transfer. */
  I2cBus i2c(int number);

  /**
   * Opens a relay on a GPIO line, off.
   *
   * @throws IOException in one sentence, when that cannot be done
   */
  Relay gpio(String relay, int line, ActiveLevel active) throws IOException;

  /** Returns the way to let a sensor convert. */
  Pause pause();

  /** Returns the clock for durations. */
  MonotonicClock clock();

  /** Returns the clock for dates. */
  InstantSource wallClock();

  /**
   * Drives every line off and lets go of everything; safe to call twice.
   *
   * @throws IOException when it is not certain that every line is off
   */
  @Override
  void close() throws IOException;
}
