package rindward.controller.diagnosis;

/**
 * Finds out whether an exhaust moves air: with much colder air outside and no heat, every run of
 * some minutes must show as a dip. Three runs without one are no accident. A run in which it once
 * was not so much colder, or was heated, is not judged: its dip is over.
 *
 * <p>For one thread.
 */
public final class DeadExhaustDetector {
  private static final long LEAST_RUN_SECONDS = 180;

  /** Against less than that the dip drowns in what else goes on. */
  private static final double COLDER_OUTSIDE_K = 6;

  private static final double DIP_K = 0.2;
  private static final int RUNS = 3;

  private long sinceSeconds = Long.MIN_VALUE;
  private double start;
  private double lowest;
  private boolean isJudged;
  private boolean isSpoilt;
  private int without;

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param roomC NaN if unknown
   * @param outdoorC NaN if unknown
   */
  public void tick(
      long nowSeconds, double roomC, double outdoorC, boolean isVenting, boolean isHeating) {
    if (!isVenting) {
      sinceSeconds = Long.MIN_VALUE;
      isSpoilt = false;
      return;
    }
    // A comparison with NaN is false: what is not known cannot be told.
    boolean canTell = !isHeating && roomC - outdoorC >= COLDER_OUTSIDE_K;
    isSpoilt |= !canTell;
    if (isSpoilt) {
      return;
    }
    if (sinceSeconds == Long.MIN_VALUE) {
      sinceSeconds = nowSeconds;
      start = roomC;
      lowest = roomC;
      isJudged = false;
    }
    lowest = Math.min(lowest, roomC);
    if (start - lowest >= DIP_K) {
      without = 0;
      isJudged = true;
    } else if (!isJudged && nowSeconds - sinceSeconds >= LEAST_RUN_SECONDS) {
      without++;
      isJudged = true;
    }
  }

  /** Tells whether the last runs showed nothing. */
  public boolean isDead() {
    return without >= RUNS;
  }
}
