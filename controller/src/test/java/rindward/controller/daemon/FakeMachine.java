package rindward.controller.daemon;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.sensor.I2cBus;
import rindward.hardware.sensor.Pause;
import rindward.hardware.wired.Machine;

/** A machine whose kernel is a folder of files and whose lines note what they are switched to. */
public final class FakeMachine implements Machine {
  private final Path sysfs;
  private final Time time;
  private final List<String> switched = new ArrayList<>();
  private final Set<Integer> broken = new HashSet<>();

  public FakeMachine(Path sysfs, Time time) {
    this.sysfs = sysfs;
    this.time = time;
  }

  /** Returns what the lines were switched to so far, as "17 off". */
  public List<String> switched() {
    return switched;
  }

  /** Hangs up the sensor of air {@code sht3x}, or lets it say something else. */
  public void airSays(int milliC, int milliPct) {
    try {
      Path device = Files.createDirectories(sysfs.resolve("class/hwmon/hwmon0"));
      Files.writeString(device.resolve("name"), "sht3x\n");
      Files.writeString(device.resolve("temp1_input"), milliC + "\n");
      Files.writeString(device.resolve("humidity1_input"), milliPct + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Makes a line one that cannot be opened. */
  public void breakLine(int line) {
    broken.add(line);
  }

  @Override
  public Path sysfs() {
    return sysfs;
  }

  @Override
  public I2cBus i2c(int number) {
    return address -> {
      throw new IOException("there is no I2C bus " + number);
    };
  }

  @Override
  public Relay gpio(String relay, int line, ActiveLevel active) throws IOException {
    if (broken.contains(line)) {
      throw new IOException("relay " + relay + " cannot have GPIO " + line);
    }
    return new Relay() {
      @Override
      public String name() {
        return relay;
      }

      @Override
      public void set(boolean on) {
        switched.add(line + (on ? " on" : " off"));
      }
    };
  }

  @Override
  public Pause pause() {
    return millis -> {};
  }

  @Override
  public MonotonicClock clock() {
    return () -> time.now().nanos();
  }

  @Override
  public InstantSource wallClock() {
    return () -> time.now().at();
  }

  @Override
  public void close() {}
}
