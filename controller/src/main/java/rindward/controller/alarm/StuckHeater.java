package rindward.controller.alarm;

/**
 * Sees a heater that goes on heating after it was switched off: the air keeps the lift that the
 * heater gave it, where it should lose it within minutes. Also sees a room that warms fast with
 * everything off. Judgement: ten minutes and a quarter of an hour. A reading that has not changed
 * at all since then is a probe's fault and no heater's.
 *
 * <p>For one thread.
 */
public final class StuckHeater {
  private static final long JUDGED_AFTER_SECONDS = 600;
  private static final long WINDOW_SECONDS = 900;

  /** A heater that lifts the air by less cannot be told from the weather. */
  private static final double LEAST_LIFT_K = 0.6;

  /** Of its lift the air loses more than this within the ten minutes. */
  private static final double LOST_SHARE = 0.25;

  /** What sun and fruit together cannot do in a quarter of an hour, against a colder outside. */
  private static final double UNEXPLAINED_RISE_K = 2;

  private static final double COLDER_OUTSIDE_K = 5;

  private boolean wasHeating;
  private long offSinceSeconds = Long.MIN_VALUE;
  private double offC;
  private double lowestC;
  private double highestC;
  private long windowBeganSeconds = Long.MIN_VALUE;
  private double windowLowestC;
  private boolean isStuck;

  /**
   * Takes in one tick.
   *
   * @param nowSeconds monotonic
   * @param roomC the room's air; NaN if unknown
   * @param outdoorC NaN if unknown
   * @param isHeating whether the heater is commanded on
   * @param isDisturbed whether air is let in, or fruit was carried in lately
   * @param liftK how far the heater usually lifts the air; NaN while that is not known
   */
  public void tick(
      long nowSeconds,
      double roomC,
      double outdoorC,
      boolean isHeating,
      boolean isDisturbed,
      double liftK) {
    if (Double.isNaN(roomC) || isDisturbed) {
      offSinceSeconds = Long.MIN_VALUE;
      windowBeganSeconds = Long.MIN_VALUE;
      wasHeating = isHeating;
      return;
    }
    if (isHeating) {
      windowBeganSeconds = Long.MIN_VALUE;
      offSinceSeconds = Long.MIN_VALUE;
    } else if (wasHeating) {
      offSinceSeconds = nowSeconds;
      offC = roomC;
      lowestC = roomC;
      highestC = roomC;
    }
    wasHeating = isHeating;
    if (isHeating) {
      return;
    }
    judgeKept(nowSeconds, roomC, outdoorC, liftK);
    judgeRise(nowSeconds, roomC, outdoorC);
  }

  /** Tells whether the heater was going on when it could last be told. */
  public boolean isStuck() {
    return isStuck;
  }

  private void judgeKept(long nowSeconds, double roomC, double outdoorC, double liftK) {
    // Comparisons with NaN are false: what is not known is not judged.
    if (offSinceSeconds == Long.MIN_VALUE || !(liftK >= LEAST_LIFT_K)) {
      return;
    }
    lowestC = Math.min(lowestC, roomC);
    highestC = Math.max(highestC, roomC);
    double lostK = offC - lowestC;
    if (isStuck) {
      isStuck = lostK < 2 * LOST_SHARE * liftK;
    } else if (nowSeconds - offSinceSeconds >= JUDGED_AFTER_SECONDS) {
      isStuck =
          lowestC < highestC
              && lostK < LOST_SHARE * liftK
              && roomC >= offC
              && roomC - outdoorC > COLDER_OUTSIDE_K;
    }
  }

  private void judgeRise(long nowSeconds, double roomC, double outdoorC) {
    boolean isOver = nowSeconds - windowBeganSeconds > WINDOW_SECONDS;
    if (windowBeganSeconds == Long.MIN_VALUE || isOver) {
      windowBeganSeconds = nowSeconds;
      windowLowestC = roomC;
    }
    windowLowestC = Math.min(windowLowestC, roomC);
    boolean isSettled =
        offSinceSeconds == Long.MIN_VALUE || nowSeconds - offSinceSeconds >= JUDGED_AFTER_SECONDS;
    if (isSettled
        && roomC - windowLowestC > UNEXPLAINED_RISE_K
        && roomC - outdoorC > COLDER_OUTSIDE_K) {
      isStuck = true;
    }
  }
}
