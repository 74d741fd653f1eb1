package rindward.controller.estimate;

/**
 * How much of its time a room's heater has run of late, for the hours in which no probe can be
 * trusted.
 *
 * @param share 0..1, over about a day
 * @param sightNanos when a probe was last trusted, monotonic
 */
public record HeaterDuty(double share, long sightNanos) {
  private static final double DAY_SECONDS = 86_400;

  /** Takes in a tick; what happens blindly teaches nothing. */
  public HeaterDuty next(boolean sees, boolean heats, double seconds, long nowNanos) {
    if (!sees) {
      return this;
    }
    double part = AirEstimate.share(seconds, DAY_SECONDS);
    return new HeaterDuty(share + part * ((heats ? 1 : 0) - share), nowNanos);
  }
}
