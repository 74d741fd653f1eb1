package rindward.controller.estimate;

import java.util.Objects;

/**
 * What a room has taught about itself: how far and how fast its air answers to its heater, and how
 * much of it the exhaust exchanges. Measured anew at every run of either that lasts long enough to
 * tell, a fifth of the way each time.
 *
 * @param heaterSwingK how far the air rises within minutes of heating, before walls and fruit
 *     follow
 * @param answer how fast it does
 * @param exhaustShare share of the difference to outdoors that the air loses in the first minute of
 *     exhausting
 * @param heaterRuns how many runs taught the first
 * @param exhaustRuns how many taught the second
 */
public record IdentifiedResponse(
    double heaterSwingK,
    AirTimeConstant answer,
    double exhaustShare,
    int heaterRuns,
    int exhaustRuns) {
  /** What was kept in a file may lack it. */
  public IdentifiedResponse {
    Objects.requireNonNull(answer, "answer");
  }

  /** Before anything was seen: cautious figures for a small insulated room (judgement). */
  public static final IdentifiedResponse NOTHING =
      new IdentifiedResponse(2, AirTimeConstant.UNKNOWN, 0.15, 0, 0);

  /** No room rises further by itself before somebody has smelt it (judgement). */
  private static final double HIGHEST_SWING_K = 40;

  private static final double SHARE = 0.2;
  private static final double SHORTEST_SECONDS = 19;
  private static final double LONGEST_SECONDS = 180;

  private static final double LEAST_DIFFERENCE_K = 3;

  /**
   * Takes in a tick.
   *
   * @param heater the heater before this tick's decision
   * @param exhaust likewise
   * @param seconds time since the tick before
   * @param ends whether the run ends now, which makes a short one tell what it can
   */
  public IdentifiedResponse heating(
      OutputState heater,
      OutputState exhaust,
      AirEstimate air,
      long nanos,
      double seconds,
      boolean ends) {
    double ran = (nanos - heater.sinceNanos()) / 1e9;
    boolean alone = !exhaust.on() && (nanos - exhaust.sinceNanos()) / 1e9 > ran + LONGEST_SECONDS;
    if (!heater.on() || !alone || Double.isNaN(heater.airC())) {
      return this;
    }
    double riseK = air.airC() - heater.airC();
    AirTimeConstant next = answer.next(ran, seconds, riseK);
    if (!tells(ran, seconds, ends)) {
      return next == answer
          ? this
          : new IdentifiedResponse(heaterSwingK, next, exhaustShare, heaterRuns, exhaustRuns);
    }
    double seen = Math.max(0, riseK / AirEstimate.share(ran, next.seconds()));
    return new IdentifiedResponse(
        heaterRuns == 0 ? seen : heaterSwingK + SHARE * (seen - heaterSwingK),
        next,
        exhaustShare,
        heaterRuns + 1,
        exhaustRuns);
  }

  /** Takes in a tick of the exhaust; see {@link #heating}. */
  public IdentifiedResponse exhausting(
      OutputState exhaust,
      OutputState heater,
      AirEstimate air,
      double outdoorC,
      long nanos,
      double seconds,
      boolean ends) {
    double ran = (nanos - exhaust.sinceNanos()) / 1e9;
    boolean alone = (nanos - heater.sinceNanos()) / 1e9 > ran + LONGEST_SECONDS;
    double difference = exhaust.airC() - outdoorC;
    if (!exhaust.on()
        || !alone
        || !(Math.abs(difference) >= LEAST_DIFFERENCE_K)
        || !tells(ran, seconds, ends)) {
      return this;
    }
    double seen = (exhaust.airC() - air.airC()) / difference * 60 / Math.min(120, ran);
    double bounded = Math.min(1, Math.max(0.01, seen));
    return new IdentifiedResponse(
        heaterSwingK,
        answer,
        exhaustRuns == 0 ? bounded : exhaustShare + SHARE * (bounded - exhaustShare),
        heaterRuns,
        exhaustRuns + 1);
  }

  /** Tells whether every figure is one that a room can teach. */
  boolean hasPossibleFigures() {
    return 0 <= heaterSwingK
        && heaterSwingK <= HIGHEST_SWING_K
        && 0.01 <= exhaustShare
        && exhaustShare <= 1
        && heaterRuns >= 0
        && exhaustRuns >= 0
        && Math.abs(answer.earlyK()) <= HIGHEST_SWING_K
        && Math.abs(answer.lateK()) <= HIGHEST_SWING_K
        && answer.runs() >= 0
        && Math.abs(answer.presentK()) <= HIGHEST_SWING_K;
  }

  private static boolean tells(double ran, double seconds, boolean ends) {
    boolean runsLongEnough = ran >= LONGEST_SECONDS && ran - seconds < LONGEST_SECONDS;
    return runsLongEnough || (ends && ran >= SHORTEST_SECONDS && ran < LONGEST_SECONDS);
  }

  /** Returns by how much the air has risen after heating for a while. */
  public double riseK(double seconds) {
    return heaterSwingK * AirEstimate.share(seconds, answer.seconds());
  }

  /** Returns by how much the air has fallen after exhausting for a while, at most a minute. */
  public double troughK(double airC, double outdoorC, double seconds) {
    return Math.max(0, airC - outdoorC) * exhaustShare * Math.min(1, seconds / 60);
  }
}
