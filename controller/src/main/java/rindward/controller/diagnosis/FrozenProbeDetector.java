package rindward.controller.diagnosis;

import rindward.hardware.Reading;

/**
 * Sees a probe that repeats itself: not one hundredth of change in temperature and humidity in a
 * quarter of an hour of heat, in two hours in which its room was switched, or for half a day
 * whatever happened. Real air is never that still.
 *
 * <p>For one thread.
 */
public final class FrozenProbeDetector {
  /** For what tells humidity too: a thermometer inside a fruit may say the same for longer. */
  private static final long STILL_WHILE_HEATED_SECONDS = 900;

  private static final long STILL_WHILE_SWITCHED_SECONDS = 2 * 3600;
  private static final long STILL_SECONDS = 12 * 3600;

  /** One run of a heater may be too short for a slow probe; this many are not (judgement). */
  private static final int RUNS = 3;

  private int temperature;
  private int humidity;
  private long sinceSeconds = Long.MIN_VALUE;
  private int runs;
  private long heatedSeconds;
  private boolean wasRunning;
  private long lastSeconds;

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param reading what the probe says, not older than it should be
   * @param isRunning whether anything is commanded on that changes the air about it
   * @param isHeating whether the heater is
   */
  public void tick(long nowSeconds, Reading reading, boolean isRunning, boolean isHeating) {
    boolean isSame =
        sinceSeconds != Long.MIN_VALUE
            && reading.temperatureMilliC() == temperature
            && reading.humidityMilliPct() == humidity;
    if (!isSame) {
      temperature = reading.temperatureMilliC();
      humidity = reading.humidityMilliPct();
      sinceSeconds = nowSeconds;
      runs = 0;
      heatedSeconds = 0;
    } else if (isHeating && reading.hasHumidity()) {
      heatedSeconds += nowSeconds - lastSeconds;
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
    return still >= STILL_SECONDS
        || heatedSeconds >= STILL_WHILE_HEATED_SECONDS
        || (still >= STILL_WHILE_SWITCHED_SECONDS && runs >= RUNS);
  }
}
