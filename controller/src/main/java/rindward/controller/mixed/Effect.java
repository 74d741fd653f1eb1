package rindward.controller.mixed;

import java.util.Arrays;

/**
 * Effects of the groups of one kind, or of one fixed term: every row of data has a level of it.
 *
 * @param levels how many there are
 * @param levelOfRow of every row, from 0; -1 where the row has none of it
 * @param weightOfRow by what the effect is multiplied in every row: 1, or a covariate
 * @param spread which of the model's spreads its levels are drawn with; {@link #FIXED} if they are
 *     not drawn but free, {@link #UNIT} if their spread is known and stands in the weights
 */
public record Effect(int levels, int[] levelOfRow, double[] weightOfRow, int spread) {
  /** Instead of a spread: nothing draws this effect to zero. */
  public static final int FIXED = -1;

  /** Instead of a spread: drawn with a standard deviation of one, known beforehand. */
  public static final int UNIT = -2;

  /** Returns effects that are added to each row as they are. */
  public static Effect of(int levels, int[] levelOfRow, int spread) {
    double[] ones = new double[levelOfRow.length];
    Arrays.fill(ones, 1);
    return new Effect(levels, levelOfRow, ones, spread);
  }

  /** Returns levels that are drawn with a spread that is known. */
  public static Effect known(int levels, int[] levelOfRow, double spread) {
    double[] weights = new double[levelOfRow.length];
    Arrays.fill(weights, spread);
    return new Effect(levels, levelOfRow, weights, UNIT);
  }

  /** Returns one free coefficient of a covariate. */
  public static Effect slope(double[] covariate) {
    return new Effect(1, new int[covariate.length], covariate, FIXED);
  }

  /** Returns the free level that all rows share. */
  public static Effect intercept(int rows) {
    return of(1, new int[rows], FIXED);
  }

  boolean isFixed() {
    return spread == FIXED;
  }

  /** Tells whether a row has a level of it that counts. */
  boolean isIn(int row) {
    return levelOfRow[row] >= 0 && weightOfRow[row] != 0;
  }
}
