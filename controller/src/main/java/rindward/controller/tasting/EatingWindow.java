package rindward.controller.tasting;

import java.util.Locale;

/**
 * When a lot or variety ate best by what was tasted of it.
 *
 * @param from first day of keeping
 * @param to last day of keeping, inclusive
 * @param bestDay the day within, on which it was liked most
 * @param liking how much, on the nine-point scale
 * @param tastes how many tastes this rests on
 * @param isEnough whether that is enough to stand before the guide
 */
public record EatingWindow(
    int from, int to, int bestDay, double liking, int tastes, boolean isEnough) {

  /** Returns the window as one sentence. */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "Liked best from day %d to %d, most on day %d (%.1f of 9), by %d %s%s.",
        from,
        to,
        bestDay,
        liking,
        tastes,
        tastes == 1 ? "taste" : "tastes",
        isEnough ? "" : "; too few to go by instead of the guide");
  }
}
