package rindward.controller.control;

/**
 * How much of its time a room's heater has run of late, for the hours in which no probe can be
 * trusted.
 *
 * @param share 0..1, over about a day
 * @param sightNanos when a probe was last trusted, monotonic
 */
record HeatDuty(double share, long sightNanos) {
  private static final double DAY_SECONDS = 86_400;

  /** Takes in a tick; what happens blindly teaches nothing. */
  HeatDuty next(boolean sees, boolean heats, double seconds, long nowNanos) {
    if (!sees) {
      return this;
    }
    double part = AirTrend.share(seconds, DAY_SECONDS);
    return new HeatDuty(share + part * ((heats ? 1 : 0) - share), nowNanos);
  }
}
