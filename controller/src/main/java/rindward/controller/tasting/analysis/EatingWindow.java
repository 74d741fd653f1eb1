package rindward.controller.tasting.analysis;

import java.util.Locale;

/**
 * When a lot or variety ate best by what was tasted of it.
 *
 * @param from first day of it, counted from harvest
 * @param to last day of it, inclusive
 * @param bestDay the day within, on which it was liked most
 * @param liking how much, on the nine-point scale
 * @param tastes how many tastes this rests on
 * @param isStartSeen whether it was tasted before, and liked less; otherwise it may begin earlier
 * @param isEndSeen whether it was tasted after, and liked less; otherwise it may last longer
 * @param isEnough whether that is enough to stand before the guide
 */
public record EatingWindow(
    int from,
    int to,
    int bestDay,
    double liking,
    int tastes,
    boolean isStartSeen,
    boolean isEndSeen,
    boolean isEnough) {

  /** Returns the window as one sentence. */
  public String sentence() {
    return String.format(
        Locale.ROOT,
        "Liked best from day %d to %d after harvest%s, most on day %d (%.1f of 9), by %d %s%s.",
        from,
        to,
        isEndSeen ? "" : " (the last day near which it was tasted)",
        bestDay,
        liking,
        tastes,
        tastes == 1 ? "taste" : "tastes",
        isEnough ? "" : "; too few to go by instead of the guide");
  }
}
