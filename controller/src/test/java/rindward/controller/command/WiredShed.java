package rindward.controller.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Settings;
import rindward.hardware.MonotonicClock;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;
import rindward.hardware.sensor.I2cBus;
import rindward.hardware.sensor.Pause;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;
import rindward.hardware.wired.Machine;

/**
 * The simulated shed's storage room, wired as hardware/WIRING.md draws it: the lines of the board
 * switch K1 and KF, and KS (the limit), KH (the heartbeat and the air-flow switch) stand before the
 * heater. What a person would do with bridge and plug is done by its fields.
 */
final class WiredShed implements Machine {
  static final int HEATER = 17;
  static final int FAN = 22;
  static final int HEARTBEAT = 24;
  private static final long HELD_NANOS = Duration.ofSeconds(27).toNanos();

  boolean isFanUnplugged;
  boolean isContactorBridged;
  boolean isLimitOpen;
  boolean isAirSwitchBridged;
  boolean isHeartbeatContactorWelded;
  private final Time.Stepped time;
  private final SimulatedShed shed;
  private final Relay heater;
  private final Relay fan;
  private boolean commandsHeat;
  private boolean commandsAir;
  private boolean beat;
  private boolean hasBeaten;
  private long edgeNanos;

  /**
   * @param settings the example's, all of it simulated
   */
  WiredShed(Settings settings, Instant at) throws IOException {
    time = new Time.Stepped(at);
    shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    heater = shed.relay("storage-heater");
    fan = shed.relay("storage-circulation");
  }

  Time.Stepped time() {
    return time;
  }

  /** Tells whether the relay that the heartbeat holds is closed. */
  boolean isHeld() {
    return isHeartbeatContactorWelded || (hasBeaten && time.now().nanos() - edgeNanos < HELD_NANOS);
  }

  /** Tells whether the heater has current. */
  boolean isHeating() {
    boolean hasAir = isAirSwitchBridged || (commandsAir && !isFanUnplugged);
    return (commandsHeat || isContactorBridged) && isHeld() && hasAir && !isLimitOpen;
  }

  /** Lives for a while. */
  void live(int millis) {
    try {
      for (int left = millis; left > 0; left -= 500) {
        heater.set(isHeating());
        fan.set(commandsAir && !isFanUnplugged);
        time.advance(Duration.ofMillis(Math.min(left, 500)));
        shed.catchUp();
      }
      heater.set(isHeating());
      fan.set(commandsAir && !isFanUnplugged);
      shed.catchUp();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns for how many seconds a part has really run so far. */
  double secondsOn(String relay) throws IOException {
    return shed.meter("storage-" + relay).hoursOn() * 3_600;
  }

  @Override
  public Relay gpio(String relay, int line, ActiveLevel active) {
    return new Relay() {
      @Override
      public String name() {
        return relay;
      }

      @Override
      public void set(boolean on) {
        switch (line) {
          case HEATER -> commandsHeat = on;
          case FAN -> commandsAir = on;
          default -> edge(on);
        }
      }
    };
  }

  /** A line that is driven to what it was gives no edge. */
  private void edge(boolean level) {
    if (level != beat) {
      beat = level;
      hasBeaten = true;
      edgeNanos = time.now().nanos();
    }
  }

  @Override
  public Pause pause() {
    return this::live;
  }

  @Override
  public Path sysfs() {
    return Path.of("/nowhere");
  }

  @Override
  public I2cBus i2c(int number) {
    return address -> {
      throw new IOException("there is no I2C bus " + number);
    };
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
  public void close() {
    commandsHeat = false;
    commandsAir = false;
  }
}
