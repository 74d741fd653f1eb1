package rindward.controller.diagnosis;

/**
 * Finds out whether a heater that is commanded on heats, from the lift that it gives the air: a
 * dead one gives none in ten minutes, or takes back what it gave. Learns the usual lift as it goes;
 * until then it waits twenty minutes for a small one. A reading that does not change at all says
 * nothing: that is {@link FrozenProbeDetector}'s.
 */
final class DeadHeaterDetector {
  private static final long PATIENCE_SECONDS = 600;
  private static final double LEAST_LIFT_K = 0.3;
  private static final double FALLS_ON_K = -0.03;
  private static final double LEARNING_SHARE = 0.1;

  private double usualLiftK = Double.NaN;
  private long onSinceSeconds;
  private long lastSeconds;
  private double startC;
  private double highestC;
  private double lowestC;
  private long heatedUntilSeconds = Long.MIN_VALUE / 2;
  private boolean isOn;
  private boolean isWarmStart;
  private boolean isJudged;
  private boolean isDead;

  /** Takes in one tick; while something else warms or cools the air nothing can be told. */
  void tick(long nowSeconds, double roomC, boolean isHeating, boolean isDisturbed) {
    if (!isHeating || isDisturbed || Double.isNaN(roomC)) {
      if (isOn && !isJudged && !isDead && highestC - startC >= LEAST_LIFT_K) {
        learn(highestC - startC);
      }
      heatedUntilSeconds = isOn || isHeating ? nowSeconds : heatedUntilSeconds;
      isOn = false;
      return;
    }
    if (!isOn) {
      isOn = true;
      isWarmStart = nowSeconds - heatedUntilSeconds < PATIENCE_SECONDS;
      isJudged = false;
      onSinceSeconds = nowSeconds;
      startC = roomC;
      highestC = roomC;
      lowestC = roomC;
    }
    highestC = Math.max(highestC, roomC);
    lowestC = Math.min(lowestC, roomC);
    judge(nowSeconds, roomC);
    lastSeconds = nowSeconds;
  }

  /** Tells whether the heater was dead when it could last be told. */
  boolean isDead() {
    return isDead;
  }

  /** Returns how far the heater usually lifts the air; NaN until it has been seen. */
  double usualLiftK() {
    return usualLiftK;
  }

  private void judge(long nowSeconds, double roomC) {
    if (isDead) {
      isDead = roomC - lowestC < halfLiftK();
    } else if (isJudged) {
      isDead = highestC - roomC > halfLiftK();
      // A cold night pulls the room down slowly; a heater that dies does it at once.
      highestC -= (highestC - roomC) * (nowSeconds - lastSeconds) / PATIENCE_SECONDS;
    } else if (lowestC < highestC && nowSeconds - onSinceSeconds >= patienceSeconds()) {
      isJudged = true;
      // One that was off for moments only, or is at its limit, holds level; a dead one falls on.
      isDead = roomC - startC < (isWarmStart ? FALLS_ON_K : halfLiftK() / 2);
      lowestC = roomC;
      if (!isDead && !isWarmStart) {
        learn(highestC - startC);
      }
    }
  }

  private double halfLiftK() {
    return Double.isNaN(usualLiftK) ? LEAST_LIFT_K : Math.max(LEAST_LIFT_K, usualLiftK / 2);
  }

  private long patienceSeconds() {
    return Double.isNaN(usualLiftK) ? 2 * PATIENCE_SECONDS : PATIENCE_SECONDS;
  }

  private void learn(double liftK) {
    usualLiftK =
        Double.isNaN(usualLiftK) ? liftK : usualLiftK + LEARNING_SHARE * (liftK - usualLiftK);
  }
}
