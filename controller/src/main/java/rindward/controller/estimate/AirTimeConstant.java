package rindward.controller.estimate;

/**
 * How fast a room's air answers to its heater, learned from how far it has risen early and late in
 * every run that lasts. The two rises are averaged before their ratio is taken, so that the noise
 * of a single run does not lengthen the answer.
 *
 * @param earlyK mean rise at the early look
 * @param lateK mean rise at the late look, after three times as long
 * @param runs how many runs taught them
 * @param presentK the rise at the early look of the present run
 * @param presentSeconds when that look was; NaN before it
 */
public record AirTimeConstant(
    double earlyK, double lateK, int runs, double presentK, double presentSeconds) {
  public static final AirTimeConstant UNKNOWN = new AirTimeConstant(0, 0, 0, 0, Double.NaN);

  /** How fast the air of a small room answers (judgement: about a minute). */
  private static final double USUAL_SECONDS = 60;

  /** What the probes tell of the air is this late, even with their lag made up for. */
  private static final double TOLD_LATE_SECONDS = 10;

  private static final double EARLY_SECONDS = TOLD_LATE_SECONDS + 30;
  private static final double LEAST_SHARE = 0.05;
  private static final double SHORTEST_SECONDS = 20;
  private static final double LONGEST_SECONDS = 300;

  /**
   * Takes in a tick of heating.
   *
   * @param ran how long the heater has run
   * @param seconds time since the tick before
   * @param riseK how far the air has risen since it began
   */
  AirTimeConstant next(double ran, double seconds, double riseK) {
    if (isFirstFrom(EARLY_SECONDS, ran, seconds)) {
      return new AirTimeConstant(earlyK, lateK, runs, riseK, ran);
    }
    double late = TOLD_LATE_SECONDS + 3 * (presentSeconds - TOLD_LATE_SECONDS);
    if (Double.isNaN(presentSeconds) || !isFirstFrom(late, ran, seconds)) {
      return this;
    }
    double share = Math.max(LEAST_SHARE, 1.0 / (runs + 1));
    return new AirTimeConstant(
        earlyK + share * (presentK - earlyK),
        lateK + share * (riseK - lateK),
        runs + 1,
        0,
        Double.NaN);
  }

  /**
   * Returns the time constant, s. With x what is missing at the early look of a first-order rise,
   * the late one at three times as long is (1 - x^3) / (1 - x) = 1 + x + x^2 times as far.
   */
  double seconds() {
    if (runs == 0 || !(earlyK > 0)) {
      return USUAL_SECONDS;
    }
    double ratio = Math.min(2.99, Math.max(1.01, lateK / earlyK));
    double missing = (Math.sqrt(4 * ratio - 3) - 1) / 2;
    double found = -(EARLY_SECONDS - TOLD_LATE_SECONDS) / Math.log(missing);
    return Math.min(LONGEST_SECONDS, Math.max(SHORTEST_SECONDS, found));
  }

  private static boolean isFirstFrom(double moment, double ran, double seconds) {
    return ran >= moment && ran - seconds < moment;
  }
}
