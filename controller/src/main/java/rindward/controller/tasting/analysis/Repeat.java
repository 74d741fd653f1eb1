package rindward.controller.tasting.analysis;

/**
 * What one panelist gave the same sample twice, unknowing.
 *
 * @param panelist who
 * @param first score of the cup served first
 * @param again score of the hidden duplicate
 */
public record Repeat(String panelist, int first, int again) {
  /** So many points apart on nine, and a panelist's order of close samples means little. */
  private static final int UNSTEADY = 3;

  /** Returns how far the two scores lie apart. */
  public int difference() {
    return Math.abs(first - again);
  }

  /** Tells whether the two scores lie as far apart as different samples do. Common practice. */
  public boolean isUnsteady() {
    return difference() >= UNSTEADY;
  }

  /** Returns how far apart the scores lie, as part of a sentence. */
  String words() {
    return panelist + " by " + difference() + (isUnsteady() ? " (unsteady)" : "");
  }
}
