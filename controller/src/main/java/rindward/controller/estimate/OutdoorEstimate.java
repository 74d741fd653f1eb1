package rindward.controller.estimate;

import rindward.controller.room.Picture;

/**
 * How it has been outdoors: now, over the last day, and yesterday's span. NaN while unknown.
 *
 * @param nanos when it was last looked at, monotonic
 * @param nowC air temperature, smoothed over minutes
 * @param vapourPa vapour pressure, likewise
 * @param meanC mean over about a day
 * @param daySinceNanos when the present span of 24 hours began
 * @param coldestC coldest of this span so far
 * @param warmestC warmest of this span so far
 * @param lastColdestC coldest of the span before
 * @param lastWarmestC warmest of the span before
 */
public record OutdoorEstimate(
    long nanos,
    double nowC,
    double vapourPa,
    double meanC,
    long daySinceNanos,
    double coldestC,
    double warmestC,
    double lastColdestC,
    double lastWarmestC) {

  private static final double SMOOTHING_SECONDS = 300;
  private static final double DAY_SECONDS = 86_400;
  static final long DAY_NANOS = 86_400_000_000_000L;

  /** Nothing is known, as for a shed without an outdoor probe. */
  public static final OutdoorEstimate UNKNOWN =
      new OutdoorEstimate(
          0, Double.NaN, Double.NaN, Double.NaN, 0, Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  /** Takes in what the outdoor probe says; without it what was known is forgotten. */
  public static OutdoorEstimate next(OutdoorEstimate before, Picture outdoor, long nanos) {
    if (!outdoor.hasTemperature()) {
      return UNKNOWN;
    }
    double measuredC = outdoor.temperatureMilliC() / 1000.0;
    double vapourPa = AirEstimate.vapourPa(outdoor, measuredC);
    if (!before.isKnown()) {
      return new OutdoorEstimate(
          nanos, measuredC, vapourPa, measuredC, nanos, measuredC, measuredC, measuredC, measuredC);
    }
    double seconds = (nanos - before.nanos) / 1e9;
    if (seconds <= 0) {
      return before;
    }
    double share = AirEstimate.share(seconds, SMOOTHING_SECONDS);
    double nowC = before.nowC + share * (measuredC - before.nowC);
    boolean isNewDay = (nanos - before.daySinceNanos) / 1e9 >= DAY_SECONDS;
    return new OutdoorEstimate(
        nanos,
        nowC,
        Double.isNaN(before.vapourPa)
            ? vapourPa
            : before.vapourPa + share * (vapourPa - before.vapourPa),
        before.meanC + AirEstimate.share(seconds, DAY_SECONDS) * (measuredC - before.meanC),
        isNewDay ? nanos : before.daySinceNanos,
        isNewDay ? nowC : Math.min(before.coldestC, nowC),
        isNewDay ? nowC : Math.max(before.warmestC, nowC),
        isNewDay ? before.coldestC : before.lastColdestC,
        isNewDay ? before.warmestC : before.lastWarmestC);
  }

  /** Returns the same by a monotonic clock that shows so much more. */
  OutdoorEstimate onClock(long shiftNanos) {
    return new OutdoorEstimate(
        nanos + shiftNanos,
        nowC,
        vapourPa,
        meanC,
        daySinceNanos + shiftNanos,
        coldestC,
        warmestC,
        lastColdestC,
        lastWarmestC);
  }

  /** Tells whether every figure is one that weather can have. */
  boolean hasPossibleFigures() {
    return AirEstimate.isPossibleC(nowC)
        && AirEstimate.isPossibleC(meanC)
        && AirEstimate.isPossibleC(coldestC)
        && AirEstimate.isPossibleC(warmestC)
        && AirEstimate.isPossibleC(lastColdestC)
        && AirEstimate.isPossibleC(lastWarmestC);
  }

  public boolean isKnown() {
    return !Double.isNaN(nowC);
  }

  public boolean hasHumidity() {
    return !Double.isNaN(vapourPa);
  }

  /**
   * Returns how warm a warm hour of this day is expected to get: yesterday's, or today's so far.
   */
  public double expectedWarmestC() {
    return Math.max(warmestC, lastWarmestC);
  }
}
