package rindward.controller.keeping;

/**
 * What became of some fruits of one lot.
 *
 * @param day days of keeping until then, not negative
 * @param fruits how many fared so, at least one
 * @param ending how their time under watch ended
 */
public record Fate(int day, int fruits, Ending ending) {
  public Fate {
    if (day < 0) {
      throw new IllegalArgumentException("day was '" + day + "' but it must not be negative");
    }
    if (fruits < 1) {
      throw new IllegalArgumentException("fruits were '" + fruits + "' but must be at least 1");
    }
  }
}
