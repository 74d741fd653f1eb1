package rindward.controller.diagnosis;

/**
 * Sees a heater that goes on heating after it was switched off, by the room's temperature alone:
 * the air keeps the lift that the heater gave it, where it should lose it within minutes. Also sees
 * a room that warms fast with everything off. What is known of outdoors only explains things away:
 * air that is let in or leaks in can hold a room up if it is about as warm. Where nothing is known
 * of it, the room must stand above its range besides, and far above it for some hours after fruit
 * was carried in. Judgement: ten minutes and a quarter of an hour. A reading that has not changed
 * at all since then is a probe's fault and no heater's.
 *
 * <p>For one thread.
 */
public final class StuckHeaterDetector {
  private static final long JUDGED_AFTER_SECONDS = 600;
  private static final long WINDOW_SECONDS = 900;

  /** A heater that lifts the air by less cannot be told from the weather. */
  private static final double LEAST_LIFT_K = 0.6;

  /** Of its lift the air loses more than this within the ten minutes. */
  private static final double LOST_SHARE = 0.25;

  /** What sun and fruit together cannot do in a quarter of an hour. */
  private static final double UNEXPLAINED_RISE_K = 2;

  /** A room so much warmer than outside is not held up by outdoor air. */
  private static final double COLDER_OUTSIDE_K = 1;

  /** So far above its range a room has been heated, if nothing is known of outdoors. */
  private static final double ABOVE_RANGE_K = 0.5;

  /** Fruit from a sunny field does not warm a room so far above its range. */
  private static final double FRESH_ABOVE_RANGE_K = 3;

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
   * @param upperC upper limit of what is wanted
   * @param outdoorC NaN if unknown
   * @param isHeating whether the heater is commanded on
   * @param isVenting whether outdoor air is let in
   * @param isFresh whether fruit was carried in lately
   * @param liftK how far the heater usually lifts the air; NaN while that is not known
   */
  public void tick(
      long nowSeconds,
      double roomC,
      double upperC,
      double outdoorC,
      boolean isHeating,
      boolean isVenting,
      boolean isFresh,
      double liftK) {
    boolean byOutdoors =
        Double.isNaN(outdoorC)
            ? roomC < upperC + ABOVE_RANGE_K
            : roomC - outdoorC <= COLDER_OUTSIDE_K;
    boolean isExplained = byOutdoors || (isFresh && roomC < upperC + FRESH_ABOVE_RANGE_K);
    if (Double.isNaN(roomC) || (isVenting && (byOutdoors || Double.isNaN(outdoorC)))) {
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
    judgeKept(nowSeconds, roomC, isExplained, liftK);
    judgeRise(nowSeconds, roomC, isExplained);
  }

  /** Tells whether the heater was going on when it could last be told. */
  public boolean isStuck() {
    return isStuck;
  }

  private void judgeKept(long nowSeconds, double roomC, boolean isExplained, double liftK) {
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
      isStuck = lowestC < highestC && lostK < LOST_SHARE * liftK && roomC >= offC && !isExplained;
    }
  }

  private void judgeRise(long nowSeconds, double roomC, boolean isExplained) {
    boolean isOver = nowSeconds - windowBeganSeconds > WINDOW_SECONDS;
    if (windowBeganSeconds == Long.MIN_VALUE || isOver) {
      windowBeganSeconds = nowSeconds;
      windowLowestC = roomC;
    }
    windowLowestC = Math.min(windowLowestC, roomC);
    boolean isSettled =
        offSinceSeconds == Long.MIN_VALUE || nowSeconds - offSinceSeconds >= JUDGED_AFTER_SECONDS;
    if (isSettled && roomC - windowLowestC > UNEXPLAINED_RISE_K && !isExplained) {
      isStuck = true;
    }
  }
}
