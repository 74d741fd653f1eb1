package rindward.controller.keeping;

/**
 * One weight on one day.
 *
 * @param day days since whatever the series counts from; not negative, parts of a day allowed
 * @param grams weight without the crate, positive
 */
public record Weighing(double day, double grams) {
  public Weighing {
    if (!(day >= 0)) {
      throw new IllegalArgumentException("day was '" + day + "' but it must not be negative");
    }
    if (!(grams > 0)) {
      throw new IllegalArgumentException("grams were '" + grams + "' but they must be above zero");
    }
  }
}
