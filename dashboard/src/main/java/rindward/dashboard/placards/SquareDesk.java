package rindward.dashboard.placards;

/** Draws squares that a telephone reads. Called from any web thread. */
@FunctionalInterface
public interface SquareDesk {

  /**
   * Returns an SVG image.
   *
   * @param says what a telephone reads off it, at most 300 characters
   */
  String svg(String says);
}
