package rindward.controller.diagnosis;

/**
 * Sees that the probes of two rooms hang in each other's: when one room's heater is switched, the
 * other room's probe answers and its own does not, twice in a row: up and down, or down and up. A
 * wall between them lets no kelvin through in five minutes, and no weather keeps step with a
 * heater.
 *
 * <p>For one thread.
 */
public final class SwappedProbesDetector {
  private final Answers first = new Answers();
  private final Answers second = new Answers();

  /**
   * Takes in one tick of both rooms.
   *
   * @param nowSeconds monotonic
   * @param firstC what is taken for the first room's air; NaN if unknown
   * @param isFirstHeating whether its heater is commanded on
   */
  public void tick(
      long nowSeconds,
      double firstC,
      boolean isFirstHeating,
      double secondC,
      boolean isSecondHeating) {
    first.tick(nowSeconds, firstC, isFirstHeating, secondC, isSecondHeating);
    second.tick(nowSeconds, secondC, isSecondHeating, firstC, isFirstHeating);
  }

  /** Tells whether it looks so, within the hour; until it is known no heater can be judged. */
  public boolean isSuspected() {
    return first.isSuspected() || second.isSuspected();
  }

  /** Tells whether it was so twice, and never otherwise since. */
  public boolean isFound() {
    return first.isFound() || second.isFound();
  }

  /** How one heater's switchings are answered, by its own room's probe and by the other's. */
  private static final class Answers {
    private static final long WINDOW_SECONDS = 300;
    private static final long FORGOTTEN_SECONDS = 3600;
    private static final int TIMES = 2;

    /** What a heater does in five minutes to the air it heats, and nothing else (judgement). */
    private static final double LEAST_K = 1;

    /** Own air that moves by more than this share of the other's answers too. */
    private static final double OWN_SHARE = 0.25;

    private long switchedSeconds = Long.MIN_VALUE;
    private long otherOnSeconds = Long.MIN_VALUE / 2;
    private long otherOffSeconds = Long.MIN_VALUE / 2;
    private long answeredSeconds = Long.MIN_VALUE / 2;
    private long lastSeconds;
    private double ownC;
    private double otherC;
    private boolean wasHeating;
    private boolean wasOtherHeating;
    private int times;

    void tick(
        long nowSeconds,
        double ownNowC,
        boolean isHeating,
        double otherNowC,
        boolean isOtherHeating) {
      lastSeconds = nowSeconds;
      otherOnSeconds = isOtherHeating && !wasOtherHeating ? nowSeconds : otherOnSeconds;
      otherOffSeconds = !isOtherHeating && wasOtherHeating ? nowSeconds : otherOffSeconds;
      boolean isSwitched = isHeating != wasHeating;
      wasHeating = isHeating;
      wasOtherHeating = isOtherHeating;
      long sameWaySeconds = isHeating ? otherOnSeconds : otherOffSeconds;
      if (nowSeconds - sameWaySeconds <= WINDOW_SECONDS) {
        // Then the other room answers its own heater.
        switchedSeconds = Long.MIN_VALUE;
      } else if (isSwitched) {
        switchedSeconds = nowSeconds;
        ownC = ownNowC;
        otherC = otherNowC;
      } else if (switchedSeconds != Long.MIN_VALUE) {
        judge(nowSeconds, isHeating ? 1 : -1, ownNowC, otherNowC);
      }
      if (!isFound() && nowSeconds - answeredSeconds > FORGOTTEN_SECONDS) {
        times = 0;
      }
    }

    boolean isSuspected() {
      return isFound() || lastSeconds - answeredSeconds <= FORGOTTEN_SECONDS;
    }

    boolean isFound() {
      return times >= TIMES;
    }

    private void judge(long nowSeconds, int sign, double ownNowC, double otherNowC) {
      double ownK = sign * (ownNowC - ownC);
      double otherK = sign * (otherNowC - otherC);
      // Comparisons with NaN are false: what is not known is not judged.
      if (ownK >= LEAST_K) {
        times = 0;
        answeredSeconds = Long.MIN_VALUE / 2;
        switchedSeconds = Long.MIN_VALUE;
      } else if (otherK >= LEAST_K && ownK < OWN_SHARE * otherK) {
        answeredSeconds = nowSeconds;
        if (nowSeconds - switchedSeconds >= WINDOW_SECONDS) {
          times++;
          switchedSeconds = Long.MIN_VALUE;
        }
      } else if (nowSeconds - switchedSeconds >= WINDOW_SECONDS) {
        switchedSeconds = Long.MIN_VALUE;
      }
    }
  }
}
