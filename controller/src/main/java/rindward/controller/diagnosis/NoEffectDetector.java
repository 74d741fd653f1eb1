package rindward.controller.diagnosis;

/**
 * Finds out whether an output that has run for an hour has moved what it is there to move: the
 * humidity, or the temperature of a room that is aired to cool it. What runs shorter, moves the
 * least that a probe can tell, or holds what it has reached in the same run is left alone.
 *
 * <p>For one thread.
 */
public final class NoEffectDetector {
  private final double leastChange;
  private final boolean isUpward;
  private final long patienceSeconds;
  private long sinceSeconds = Long.MIN_VALUE;
  private double start;
  private double best;
  private boolean hasMoved;
  private boolean isWithout;

  /**
   * @param leastChange what it must move, in the unit of the value, above zero
   * @param isUpward whether it is meant to raise the value
   * @param patienceSeconds how long it may take
   */
  public NoEffectDetector(double leastChange, boolean isUpward, long patienceSeconds) {
    this.leastChange = leastChange;
    this.isUpward = isUpward;
    this.patienceSeconds = patienceSeconds;
  }

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param value what it is meant to move; NaN if unknown
   * @param isRunning whether it is commanded on and could have an effect
   */
  public void tick(long nowSeconds, double value, boolean isRunning) {
    if (!isRunning || Double.isNaN(value)) {
      sinceSeconds = Long.MIN_VALUE;
      hasMoved = false;
      return;
    }
    if (sinceSeconds == Long.MIN_VALUE) {
      begin(nowSeconds, value);
    }
    best = isUpward ? Math.max(best, value) : Math.min(best, value);
    if (Math.abs(best - start) >= leastChange) {
      isWithout = false;
      hasMoved = true;
      begin(nowSeconds, value);
    } else if (nowSeconds - sinceSeconds >= patienceSeconds) {
      double lost = isUpward ? start - value : value - start;
      if (hasMoved && lost < leastChange) {
        begin(nowSeconds, value);
      } else {
        isWithout = true;
      }
    }
  }

  /** Tells whether it was without effect when it could last be told. */
  public boolean isWithout() {
    return isWithout;
  }

  private void begin(long nowSeconds, double value) {
    sinceSeconds = nowSeconds;
    start = value;
    best = value;
  }
}
