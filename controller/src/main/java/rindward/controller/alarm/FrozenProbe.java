package rindward.controller.alarm;

import rindward.hardware.Reading;

/**
 * Sees a probe that repeats itself: not one hundredth of change in temperature and humidity, while
 * its room was heated or aired, or for half a day whatever happened. Real air is never that still.
 *
 * <p>For one thread.
 */
public final class FrozenProbe {
  private static final long STILL_WHILE_SWITCHED_SECONDS = 2 * 3600;
  private static final long STILL_SECONDS = 12 * 3600;

  /** One run of a heater may be too short for a slow probe; this many are not (judgement). */
  private static final int RUNS = 3;

  private int temperature;
  private int humidity;
  private long sinceSeconds = Long.MIN_VALUE;
  private int runs;
  private boolean wasRunning;
  private long lastSeconds;

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param reading what the probe says, not older than it should be
   * @param isRunning whether anything is commanded on that changes the air about it
   */
  public void tick(long nowSeconds, Reading reading, boolean isRunning) {
    boolean isSame =
        sinceSeconds != Long.MIN_VALUE
            && reading.temperatureMilliC() == temperature
            && reading.humidityMilliPct() == humidity;
    if (!isSame) {
      temperature = reading.temperatureMilliC();
      humidity = reading.humidityMilliPct();
      sinceSeconds = nowSeconds;
      runs = 0;
    }
    runs += isRunning && !wasRunning ? 1 : 0;
    wasRunning = isRunning;
    lastSeconds = nowSeconds;
  }

  /** Tells whether it repeats itself. */
  public boolean isFrozen() {
    if (sinceSeconds == Long.MIN_VALUE) {
      return false;
    }
    long still = lastSeconds - sinceSeconds;
    return still >= STILL_SECONDS || (still >= STILL_WHILE_SWITCHED_SECONDS && runs >= RUNS);
  }
}
