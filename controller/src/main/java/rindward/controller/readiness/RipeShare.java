package rindward.controller.readiness;

import rindward.controller.keeping.Interval;

/**
 * How much of a lot was ripe when it was picked, by its fruits that were cut. It holds for the lot
 * if they were not chosen by their looks.
 *
 * @param ripe fruits that had filled: full seeds, dense flesh
 * @param cut fruits that were looked into; at least one
 * @param ofLot fruits that came in, not fewer than were cut
 */
public record RipeShare(int ripe, int cut, int ofLot) {
  private static final int WHOLE = 1000;

  public RipeShare {
    if (cut < 1 || ripe < 0 || ripe > cut) {
      throw new IllegalArgumentException(
          "ripe was '" + ripe + "' of '" + cut + "' but it must be 0 to the number cut");
    }
    ofLot = Math.max(ofLot, cut);
  }

  /** Returns the least share that is ripe, in thousandths; never less than what was seen. */
  public int lowPerMille() {
    return (int) Math.round(WHOLE * low());
  }

  /** Returns the largest share that may be ripe, in thousandths; what was seen flat is not. */
  public int highPerMille() {
    return (int) Math.round(WHOLE * high());
  }

  private double low() {
    return Math.max((double) ripe / ofLot, Interval.ofShare(ripe, cut).low());
  }

  private double high() {
    double seen = 1 - (double) (cut - ripe) / ofLot;
    return Math.max(low(), Math.min(seen, Interval.ofShare(ripe, cut).high()));
  }

  /** Tells whether more than half of the lot was unripe, beyond doubt. */
  public boolean isMostlyUnripe() {
    return 2 * highPerMille() < WHOLE;
  }

  /** Tells whether half of the lot or more was ripe, beyond doubt. */
  public boolean isMostlyRipe() {
    return 2 * lowPerMille() >= WHOLE;
  }

  /** Tells whether an unripe fruit was seen. */
  public boolean hasUnripe() {
    return ripe < cut;
  }

  /** Returns how many more cut fruits settle it if all of them are ripe; 0 if it is settled. */
  public int untilCleared() {
    int more = 0;
    while (!new RipeShare(ripe + more, cut + more, ofLot).isMostlyRipe()) {
      more++;
    }
    return more;
  }

  /** Returns how many more cut fruits settle it if none of them is ripe; 0 if it is settled. */
  public int untilCondemned() {
    int more = 0;
    while (!new RipeShare(ripe, cut + more, ofLot).isMostlyUnripe()) {
      more++;
    }
    return more;
  }

  /** Returns what was seen and how far the whole lot may differ, one sentence. */
  public String sentence() {
    String seen =
        cut == 1
            ? "One fruit was cut, and it was " + (ripe == 1 ? "ripe" : "not ripe")
            : "Of "
                + cut
                + " fruits cut, "
                + (ripe == 0 ? "none was" : ripe + (ripe == 1 ? " was" : " were"))
                + " ripe";
    return seen
        + (cut == ofLot
            ? ": they were the whole lot."
            : ": between "
                + Math.round(100 * low())
                + " and "
                + Math.round(100 * high())
                + " in 100 of the lot are.");
  }
}
