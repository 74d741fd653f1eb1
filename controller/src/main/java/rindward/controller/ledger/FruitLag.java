package rindward.controller.ledger;

import rindward.controller.crop.Crop;

/**
 * How slowly a fruit follows the air: a sphere of one temperature, whose difference to the air
 * shrinks to 1/e in {@code density x heat capacity x radius / (3 x film)} (lumped capacity, any
 * textbook on heat transfer). A large fruit's core lags more than that, so cold is rather told too
 * early than too late.
 */
final class FruitLag {
  /** kg/m3, from memory: squash float. */
  private static final double DENSITY = 900;

  /** J/(kg K); about 3.89 kJ/(kg K) for winter squash, after Siebel and Chen. */
  private static final double HEAT_CAPACITY = 3900;

  /** W/(m2 K), still air and radiation together; from memory. */
  private static final double FILM = 8;

  private FruitLag() {}

  /**
   * Returns the time constant in milliseconds.
   *
   * @param grams weight of one fruit, above zero
   */
  static double millis(double grams) {
    double radiusM = Math.cbrt(3 * grams / 1000 / (4 * Math.PI * DENSITY));
    return 1000 * DENSITY * HEAT_CAPACITY * radiusM / (3 * FILM);
  }

  /** Returns what one fruit, root or bulb of a type weighs if nobody weighed any, in grams. */
  static int usualGrams(Crop crop) {
    return switch (crop.group()) {
      case PEPO, MAXIMA, MOSCHATA -> 1000;
      case SWEET_POTATO -> 300;
      case POTATO -> 200;
      case ALLIUM -> 100;
    };
  }
}
