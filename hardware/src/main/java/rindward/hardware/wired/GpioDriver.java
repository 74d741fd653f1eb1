package rindward.hardware.wired;

import java.io.IOException;
import java.util.Locale;
import rindward.hardware.Relay;
import rindward.hardware.pi4j.ActiveLevel;

/**
 * A relay on a GPIO line of the board.
 *
 * @param line its number as the board's maker counts, 0..27
 * @param active the level at which the relay is on
 */
public record GpioDriver(int line, ActiveLevel active) implements RelayDriver {
  @Override
  public String word() {
    return "gpio";
  }

  @Override
  public String place() {
    return "GPIO " + line + ", on when " + active.name().toLowerCase(Locale.ROOT);
  }

  @Override
  public Relay openOff(String relay, Parts parts) throws IOException {
    return parts.machine().gpio(relay, line, active);
  }
}
