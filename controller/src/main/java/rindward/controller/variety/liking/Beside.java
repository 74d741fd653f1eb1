package rindward.controller.variety.liking;

import rindward.controller.mixed.Mixture;

/**
 * A variety beside what it is compared with, which is of its own type.
 *
 * @param check name of the check; empty where there is none, and it is the average of the grower's
 *     own varieties of that type
 * @param difference by how many points it is liked better
 * @param toBeBetter what would show that it is better, or that it is not
 * @param toBeAsGood what would show that it is no worse than by half a point, or that it is
 */
public record Beside(String check, Mixture difference, Settling toBeBetter, Settling toBeAsGood) {
  /** So much less nobody minds. Common practice. */
  private static final double AS_GOOD_POINTS = 0.5;

  static Beside of(String check, Mixture difference, double perFruit, double floor) {
    double error = difference.error();
    return new Beside(
        check,
        difference,
        Settling.of(Math.abs(difference.mean()), error, perFruit, floor),
        Settling.of(Math.abs(difference.mean() + AS_GOOD_POINTS), error, perFruit, floor));
  }

  /** Returns the chance, 0 to 1, that it is liked better. */
  public double chanceBetter() {
    return difference.chanceAbove(0);
  }

  /** Returns the chance, 0 to 1, that it is liked no worse than by half a point. */
  public double chanceAsGood() {
    return difference.chanceAbove(-AS_GOOD_POINTS);
  }

  /** Tells whether it stands beside a check, and not beside an average. */
  public boolean isByCheck() {
    return !check.isEmpty();
  }
}
