package rindward.controller.diagnosis;

import rindward.hardware.Thousandths;

/**
 * The fruit of a room as the alarms see it: what a probe in it says, or the air followed as slowly
 * as fruit in crates does. Unlike the control it never guesses how cold new fruit was carried in:
 * nobody is woken by a guess.
 *
 * <p>For one thread.
 */
public final class FruitFollower {
  /** 3.9 kJ/(kg K) over 0.14 W/(K kg), as in the control's own view of the fruit. */
  private static final double SECONDS = 3900 / 0.14;

  private static final long LONGEST_GAP_SECONDS = 6 * 3600;

  private double fruitC = Double.NaN;
  private long lastSeconds;

  /**
   * Takes in one tick.
   *
   * @param airMilliC working value of the air; {@link Thousandths#NONE} if unknown
   * @param probedMilliC what a probe in a fruit says; {@link Thousandths#NONE} without one
   */
  public void tick(long nowSeconds, int airMilliC, int probedMilliC) {
    double airC = Thousandths.toDouble(airMilliC);
    long gap = nowSeconds - lastSeconds;
    if (probedMilliC != Thousandths.NONE) {
      fruitC = Thousandths.toDouble(probedMilliC);
    } else if (Double.isNaN(airC)) {
      return;
    } else if (Double.isNaN(fruitC) || gap > LONGEST_GAP_SECONDS) {
      fruitC = airC;
    } else {
      fruitC += (airC - fruitC) * (1 - Math.exp(-gap / SECONDS));
    }
    lastSeconds = nowSeconds;
  }

  /** Returns its temperature; {@link Thousandths#NONE} before anything was known. */
  public int milliC() {
    return Double.isNaN(fruitC) ? Thousandths.NONE : Thousandths.of(fruitC);
  }
}
