package rindward.controller.diagnosis;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Sees a door open within three minutes: air that falls faster than wind, noise and a heater that
 * has just switched off can explain, while nothing is vented.
 */
final class FastFallDetector {
  private static final long WINDOW_SECONDS = 180;
  private static final long SETTLING_SECONDS = 900;

  /** What wind and noise may do in three minutes. */
  private static final double ALLOWED_K = 0.8;

  /** How much of its lift the air may lose when the heater switches off, with a margin. */
  private static final double LIFT_SHARE = 1.5;

  private final Deque<Moment> moments = new ArrayDeque<>();
  private long lastVentSeconds = Long.MIN_VALUE / 2;
  private long lastOffSeconds = Long.MIN_VALUE / 2;
  private boolean wasHeating;
  private boolean isFast;

  private record Moment(long seconds, double roomC) {}

  /**
   * Takes in one tick.
   *
   * @param knowsVapour whether {@link OpenDoorDetector} looks too; then what a heater could do by
   *     being switched, or by dying, is left to it
   * @param liftK how far the heater usually lifts the air; NaN while that is not known
   */
  void tick(
      long nowSeconds,
      double roomC,
      boolean knowsVapour,
      boolean isHeating,
      boolean isVenting,
      double liftK) {
    lastVentSeconds = isVenting ? nowSeconds : lastVentSeconds;
    lastOffSeconds = wasHeating && !isHeating ? nowSeconds : lastOffSeconds;
    wasHeating = isHeating;
    if (Double.isNaN(roomC) || nowSeconds - lastVentSeconds < SETTLING_SECONDS) {
      moments.clear();
      isFast = false;
      return;
    }
    while (!moments.isEmpty() && nowSeconds - moments.getFirst().seconds() > WINDOW_SECONDS) {
      moments.removeFirst();
    }
    moments.addLast(new Moment(nowSeconds, roomC));
    double fallK = 0;
    for (Moment moment : moments) {
      fallK = Math.max(fallK, moment.roomC() - roomC);
    }
    boolean isSettling = nowSeconds - lastOffSeconds < SETTLING_SECONDS;
    // A comparison with NaN is false: what is not known yet is not judged.
    isFast =
        knowsVapour
            ? fallK > ALLOWED_K && !isSettling && !isHeating
            : fallK > ALLOWED_K + (isSettling ? LIFT_SHARE * liftK : 0);
  }

  boolean isFast() {
    return isFast;
  }
}
