package rindward.controller.diagnosis;

import java.util.Arrays;

/**
 * Sees outdoor air rush in, through a door ajar or a vent that does not close, by the water it does
 * not bring: the room's vapour falls within minutes below all of the last half hour, and its air
 * cools. A heater, whether it is switched or dies, moves the temperature and hardly the vapour;
 * that is how the two are told apart. Blind while it is about as damp outside.
 *
 * <p>For one thread.
 */
public final class OpenDoorDetector {
  private static final int MINUTES = 30;

  /** What is younger is the fall itself and not what it is measured against. */
  private static final int FALL_MINUTES = 3;

  private static final int LEAST_MINUTES = 5;
  private static final long SETTLING_SECONDS = 900;
  private static final long LONGEST_SECONDS = 12 * 3600;
  private static final double SMOOTHING_SECONDS = 20;

  /**
   * Shares of the saturation pressure. Judgement: in twelve simulated Decembers the vapour of a
   * well room fell by 0.9 % in three minutes at most, that of one whose door stood a fifth open by
   * 3 % at least.
   */
  private static final double FALL_SHARE = 0.014;

  private static final double DRIER_OUTSIDE_SHARE = 0.05;
  private static final double LEAST_COOLING_K = 0.1;

  private final double[] lowestPa = new double[MINUTES + 1];
  private final double[] highestC = new double[MINUTES + 1];
  private long minute = Long.MIN_VALUE;
  private long lastSeconds;
  private long disturbedSeconds = Long.MIN_VALUE / 2;
  private double smoothPa = Double.NaN;
  private long heatedSeconds = Long.MIN_VALUE / 2;
  private long switchedOnSeconds = Long.MIN_VALUE / 2;
  private long switchedOnBeforeSeconds = Long.MIN_VALUE / 2;
  private boolean wasWatered;
  private boolean isSeen;
  private long seenSeconds;
  private double recoveredPa;

  /** Knows nothing yet. */
  public OpenDoorDetector() {
    forget();
  }

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param roomC NaN if unknown
   * @param vapourPa of the room's air; NaN if unknown
   * @param saturationPa of air at the room's temperature
   * @param outdoorPa vapour outside; NaN if unknown
   * @param isHeating whether the heater is commanded on
   * @param isVenting whether anything is commanded that lets outdoor air in
   * @param isWatered whether anything is commanded that gives water to the air or takes it
   */
  public void tick(
      long nowSeconds,
      double roomC,
      double vapourPa,
      double saturationPa,
      double outdoorPa,
      boolean isHeating,
      boolean isVenting,
      boolean isWatered) {
    if (isVenting || isWatered != wasWatered) {
      disturbedSeconds = nowSeconds;
    }
    wasWatered = isWatered;
    if (isHeating && nowSeconds - heatedSeconds > FALL_MINUTES * 60) {
      switchedOnBeforeSeconds = switchedOnSeconds;
      switchedOnSeconds = nowSeconds;
    }
    heatedSeconds = isHeating ? nowSeconds : heatedSeconds;
    isSeen &= nowSeconds - seenSeconds < LONGEST_SECONDS;
    if (Double.isNaN(vapourPa) || nowSeconds - disturbedSeconds < SETTLING_SECONDS) {
      forget();
      return;
    }
    double share = Math.min(1, (nowSeconds - lastSeconds) / SMOOTHING_SECONDS);
    smoothPa = Double.isNaN(smoothPa) ? vapourPa : smoothPa + share * (vapourPa - smoothPa);
    lastSeconds = nowSeconds;
    note(nowSeconds / 60, roomC);
    if (isSeen) {
      isSeen = smoothPa < recoveredPa;
    } else if (!isWatered || nowSeconds - heatedSeconds > SETTLING_SECONDS) {
      // Heater and humidifier that lose their supply together look like a door.
      judge(nowSeconds, roomC, saturationPa, outdoorPa);
    }
  }

  /** Tells whether it does; at most half a day at a time, and no longer than the vapour is low. */
  public boolean isSeen() {
    return isSeen;
  }

  private void forget() {
    Arrays.fill(lowestPa, Double.NaN);
    Arrays.fill(highestC, Double.NaN);
    smoothPa = Double.NaN;
    minute = Long.MIN_VALUE;
  }

  private void note(long nowMinute, double roomC) {
    long first = minute == Long.MIN_VALUE ? nowMinute - MINUTES : minute + 1;
    for (long next = Math.max(first, nowMinute - MINUTES); next <= nowMinute; next++) {
      lowestPa[place(next)] = Double.NaN;
      highestC[place(next)] = Double.NaN;
    }
    minute = nowMinute;
    int now = place(nowMinute);
    // The one that is known, where the other is NaN.
    lowestPa[now] =
        smoothPa < lowestPa[now] || Double.isNaN(lowestPa[now]) ? smoothPa : lowestPa[now];
    highestC[now] = roomC > highestC[now] || Double.isNaN(highestC[now]) ? roomC : highestC[now];
  }

  private void judge(long nowSeconds, double roomC, double saturationPa, double outdoorPa) {
    double basePa = Double.POSITIVE_INFINITY;
    double warmestC = Double.NEGATIVE_INFINITY;
    int known = 0;
    for (long past = minute - MINUTES; past <= minute; past++) {
      int at = place(past);
      if (Double.isNaN(lowestPa[at])) {
        continue;
      }
      if (past < minute - FALL_MINUTES) {
        basePa = Math.min(basePa, lowestPa[at]);
        known++;
      } else {
        warmestC = Math.max(warmestC, highestC[at]);
      }
    }
    // Comparisons with NaN are false: what is not known is not judged.
    if (known >= LEAST_MINUTES
        && basePa - smoothPa > FALL_SHARE * saturationPa
        && basePa - outdoorPa > DRIER_OUTSIDE_SHARE * saturationPa
        && (warmestC - roomC > LEAST_COOLING_K || hasSeenHeat(nowSeconds))) {
      isSeen = true;
      seenSeconds = nowSeconds;
      recoveredPa = basePa - FALL_SHARE / 2 * saturationPa;
    }
  }

  /**
   * A sensor whose humidity is quicker than its temperature shows less vapour while a heater
   * starts: in rising air that counts only when the last half hour holds such a start.
   */
  private boolean hasSeenHeat(long nowSeconds) {
    return isWithin(nowSeconds - switchedOnSeconds)
        || isWithin(nowSeconds - switchedOnBeforeSeconds);
  }

  private static boolean isWithin(long agoSeconds) {
    return agoSeconds > FALL_MINUTES * 60 && agoSeconds < MINUTES * 60;
  }

  private static int place(long minute) {
    return (int) Math.floorMod(minute, (long) MINUTES + 1);
  }
}
