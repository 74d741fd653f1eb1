package rindward.controller.keeping;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether one group of lots keeps longer than another. Lots are the unit of chance, as fruits of
 * one lot fail together: which lots are of which group is dealt out anew within each season and
 * room.
 *
 * @param first lots of the first group that stood beside lots of the second
 * @param second lots of the second
 * @param difference how much more the first lost than its fellows, as a sum of lots' scores
 * @param p chance of lying so far apart, either way, if both keep alike
 * @param least the smallest chance that so many lots could ever give
 * @param rates how fast the first loses against the second; empty below many lots
 */
public record KeepingCompared(
    int first, int second, double difference, PValue p, double least, Optional<LossRates> rates) {
  /** So many of each find a threefold rate of loss in most cases: 924 ways to deal them. */
  private static final int LOTS_THAT_TELL = 6;

  /** Fewest of each for which a chance of 5 % exists: 2 of 70 ways. */
  private static final int LOTS_THAT_MAY = 4;

  /**
   * Below so many lots an error that is robust to clusters is too small (Cameron and Miller 2015,
   * Journal of Human Resources 50: 317, from memory: about 20 to 50).
   */
  private static final int MANY = 40;

  /** Compares two groups; empty if no lots of both were ever watched beside each other. */
  public static Optional<KeepingCompared> between(List<KeptLot> first, List<KeptLot> second) {
    List<LotScore> scores = LotScore.of(first, second);
    int ofFirst = (int) scores.stream().filter(LotScore::isFirst).count();
    int ofSecond = scores.size() - ofFirst;
    if (ofFirst == 0 || ofSecond == 0) {
      return Optional.empty();
    }
    LotDeals deals = new LotDeals(scores);
    return Optional.of(
        new KeepingCompared(
            ofFirst,
            ofSecond,
            deals.observed(),
            deals.p(),
            deals.least(),
            scores.size() >= MANY ? LossRates.between(first, second) : Optional.empty()));
  }

  /** Tells whether so many lots could show any difference at all. */
  public boolean couldTell() {
    return new PValue(least).isSignificant();
  }

  /** Returns the finding as sentences about two named groups. */
  public String sentence(String firstName, String secondName) {
    if (first == 1 && second == 1) {
      return "With one lot each, "
          + (difference == 0 ? "these lots kept alike" : "these lots differed")
          + "; of the varieties "
          + firstName
          + " and "
          + secondName
          + " nothing can be said. "
          + wanted();
    }
    String both = lots(first) + " of " + firstName + " and " + second + " of " + secondName;
    if (!couldTell()) {
      return String.format(
          Locale.ROOT,
          "%s are too few to show which keeps longer, whatever becomes of them (p %.2f at best)."
              + " %s",
          both,
          least,
          wanted());
    }
    String how = " (" + both + ", " + p.words() + ").";
    if (!p.isSignificant()) {
      return "No difference in keeping shown between " + firstName + " and " + secondName + how;
    }
    return (difference < 0 ? firstName : secondName)
        + " keeps longer than "
        + (difference < 0 ? secondName : firstName)
        + how
        + rates.map(r -> " " + r.sentence(firstName, secondName)).orElse("");
  }

  private static String wanted() {
    return LOTS_THAT_MAY
        + " lots of each, side by side in one season and room, can show a large difference, "
        + LOTS_THAT_TELL
        + " of each mostly do.";
  }

  private static String lots(int count) {
    return count == 1 ? "1 lot" : count + " lots";
  }
}
