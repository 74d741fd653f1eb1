package rindward.hardware.sensor;

import java.io.IOException;
import org.jspecify.annotations.Nullable;

/**
 * Tells the temperatures of a DS18B20 from the values it shows when it has none: 85.000 C after
 * power came back before it measured, 127.937 C when its power is too weak to measure (kernel
 * documentation, w1_therm), and 0.000 C when the bus is held low, because zeros pass the checksum.
 * A shed can really be at 0 C, so 0 and 85 are believed when the reading before lay close by. One
 * probe's; for one thread.
 */
public final class Ds18b20Judge {
  private static final int POWER_ON_MILLI_C = 85_000;
  private static final int BUS_LOW_MILLI_C = 0;

  /** How far the reading before may lie from 0 or 85 C. */
  private static final int NEAR_MILLI_C = 2000;

  private static final double LOWEST_C = -55;
  private static final double HIGHEST_C = 125;

  private @Nullable Integer lastMilliC;

  /**
   * Returns the temperature if it can be believed.
   *
   * @param showsScratchpad whether the bytes behind the value were seen, and were not all zero
   * @throws IOException when it is one of the values that mean something else
   */
  public int believe(int temperatureMilliC, boolean showsScratchpad) throws IOException {
    if (temperatureMilliC == POWER_ON_MILLI_C && !followsNear(temperatureMilliC)) {
      throw new IOException(
          "it said 85.000 C, which it says when power came back before it measured");
    }
    if (temperatureMilliC == BUS_LOW_MILLI_C
        && !showsScratchpad
        && !followsNear(temperatureMilliC)) {
      throw new IOException(
          "it said exactly 0.000 C out of the blue, as it does when its data wire is held low");
    }
    OperatingRange.requireC(temperatureMilliC / 1000.0, LOWEST_C, HIGHEST_C);
    lastMilliC = temperatureMilliC;
    return temperatureMilliC;
  }

  private boolean followsNear(int temperatureMilliC) {
    return lastMilliC != null && Math.abs(lastMilliC - temperatureMilliC) <= NEAR_MILLI_C;
  }
}
