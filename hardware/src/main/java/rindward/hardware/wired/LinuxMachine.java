package rindward.hardware.wired;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.pi4j.ConversionPause;
import rindward.hardware.pi4j.GpioLines;
import rindward.hardware.pi4j.Pi4jI2cBus;
import rindward.hardware.sensor.I2cBus;
import rindward.hardware.sensor.Pause;

/** The board this program runs on. Opened and closed by one thread. */
public final class LinuxMachine implements Machine {
  private final Path sysfs;
  private final MonotonicClock clock;
  private final InstantSource wallClock;
  private final Lines lines;
  private final List<Pi4jI2cBus> buses = new ArrayList<>();
  private @Nullable GpioLines open;

  /** Opens the GPIO lines. */
  @FunctionalInterface
  interface Lines {
    GpioLines open() throws IOException;
  }

  /**
   * @param sysfs usually {@code /sys}
   */
  public LinuxMachine(Path sysfs, MonotonicClock clock, InstantSource wallClock) {
    this(sysfs, clock, wallClock, GpioLines::open);
  }

  LinuxMachine(Path sysfs, MonotonicClock clock, InstantSource wallClock, Lines lines) {
    this.sysfs = sysfs;
    this.clock = clock;
    this.wallClock = wallClock;
    this.lines = lines;
  }

  @Override
  public Path sysfs() {
    return sysfs;
  }

  @Override
  public I2cBus i2c(int number) {
    Pi4jI2cBus bus = Pi4jI2cBus.of(number);
    buses.add(bus);
    return bus;
  }

  @Override
  public Relay gpio(String relay, int line, ActiveLevel active) throws IOException {
    GpioLines known = open;
    if (known == null) {
      known = lines.open();
      open = known;
    }
    return known.relay(relay, line, active);
  }

  @Override
  public Pause pause() {
    return new ConversionPause();
  }

  @Override
  public MonotonicClock clock() {
    return clock;
  }

  @Override
  public InstantSource wallClock() {
    return wallClock;
  }

  /** The lines first: a bus that does not let go must not keep a heater on. */
  @Override
  public void close() throws IOException {
    try {
      if (open != null) {
        open.close();
      }
    } finally {
      buses.forEach(Pi4jI2cBus::close);
      buses.clear();
    }
  }
}
