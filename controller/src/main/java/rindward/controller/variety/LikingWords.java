package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import rindward.controller.mixed.Mixture;
import rindward.controller.tasting.Scale;
import rindward.controller.variety.liking.Basis;
import rindward.controller.variety.liking.Beside;
import rindward.controller.variety.liking.LikingStanding;
import rindward.controller.variety.liking.Settling;

/**
 * What the scores of a variety say, in words: with what it is compared, how far that may be off,
 * what it rests on and what would settle it. "Better" and "less" are said where one in fifty or
 * fewer would be wrong: in ten varieties that are the same, a season in fifty has such a claim.
 */
final class LikingWords {
  private static final int SURE_PER_MILLE = 980;
  private static final int LIKELY_PER_MILLE = 900;
  private static final double[] IN_80 = {0.1, 0.9};
  private static final double[] IN_95 = {0.025, 0.975};
  private static final String[] SMALL = {
    "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"
  };

  private final LikingStanding standing;
  private final String typeName;

  /**
   * @param typeName what its type is called in a sentence
   */
  LikingWords(LikingStanding standing, String typeName) {
    this.standing = standing;
    this.typeName = typeName;
  }

  /** Returns the answer in a few words. */
  String words() {
    if (standing.beside().isEmpty()) {
      return "eating not judged: nothing of its type was tasted beside it";
    }
    Beside beside = standing.beside().get();
    int better = perMille(beside.chanceBetter());
    int asGood = perMille(beside.chanceAsGood());
    String than = than(beside);
    if (better >= SURE_PER_MILLE) {
      return "liked better than " + than;
    }
    if (better <= 1000 - SURE_PER_MILLE) {
      return "liked less than " + than;
    }
    if (better >= LIKELY_PER_MILLE) {
      return "probably liked better than " + than;
    }
    if (better <= 1000 - LIKELY_PER_MILLE) {
      return "probably liked less than " + than;
    }
    return asGood >= LIKELY_PER_MILLE
        ? "liked as well as " + than
        : "nobody can say yet whether it is liked as well as " + than;
  }

  /** Returns whether it eats as well as is needed: as its check, or better than the average. */
  Prospect prospect() {
    if (standing.beside().isEmpty()) {
      return Prospect.unknown("Nothing of its type was tasted beside it.");
    }
    Beside beside = standing.beside().get();
    return Prospect.of(
        beside.isByCheck() ? beside.chanceAsGood() : beside.chanceBetter(), difference(beside));
  }

  /** Returns all that is known, a sentence each. */
  List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    standing.beside().map(this::difference).ifPresent(sentences::add);
    if (standing.isGrownOnce()) {
      sentences.add(
          "All of it was one lot: this is of the variety as it was grown here once. A second lot or"
              + " year would say most.");
    }
    Mixture level = standing.level();
    sentences.add("On the scale of nine that is " + onScale(level) + ".");
    if (standing.seasons().size() > 1) {
      for (Map.Entry<Integer, Mixture> season : standing.seasons().entrySet()) {
        sentences.add(season.getKey() + " by itself: " + onScale(season.getValue()) + ".");
      }
      if (hasChanged()) {
        sentences.add("It was not the same in every year.");
      }
    }
    sentences.add(basis(standing.basis()));
    standing.beside().flatMap(this::settling).ifPresent(sentences::add);
    return sentences;
  }

  /** Returns what would settle it: more fruits; empty if it is settled or fruits do not. */
  Optional<String> settling(Beside beside) {
    Settling more = beside.isByCheck() ? beside.toBeAsGood() : beside.toBeBetter();
    if (prospect().says() != Prospect.Says.OPEN) {
      return Optional.empty();
    }
    return Optional.of(
        more.fruits() == 0
            ? "More of the same fruits hardly settle it: a second lot or year, or two tasters more,"
                + " would say more."
            : "Nobody can say yet: if it is as it seems, "
                + small(more.fruits())
                + (more.fruits() == 1 ? " fruit" : " fruits")
                + " more in "
                + small(more.sessions())
                + (more.sessions() == 1 ? " session" : " sessions")
                + " would settle it.");
  }

  private String difference(Beside beside) {
    Mixture difference = beside.difference();
    double points = difference.mean();
    return String.format(
        Locale.ROOT,
        "Liked %.1f points %s than %s: between %s (80 in 100), %s (95 in 100). That it is better"
            + " has a chance of %s; that it is no worse than by half a point, %s.",
        Math.abs(points),
        points < 0 ? "less" : "more",
        than(beside),
        range(difference, IN_80),
        range(difference, IN_95),
        Prospect.inHundred(beside.chanceBetter()),
        Prospect.inHundred(beside.chanceAsGood()));
  }

  private String than(Beside beside) {
    return beside.isByCheck()
        ? beside.check() + " (the check)"
        : "your own average of its type (" + typeName + ")";
  }

  private static String range(Mixture difference, double[] ends) {
    return String.format(
        Locale.ROOT, "%+.1f and %+.1f", difference.quantile(ends[0]), difference.quantile(ends[1]));
  }

  private static String onScale(Mixture level) {
    return String.format(
        Locale.ROOT,
        "%.1f (%.1f to %.1f, 80 in 100)",
        held(level.mean()),
        held(level.quantile(IN_80[0])),
        held(level.quantile(IN_80[1])));
  }

  private static double held(double value) {
    return Math.max(Scale.LIKING.lowest(), Math.min(Scale.LIKING.highest(), value));
  }

  private boolean hasChanged() {
    double highestLow = Double.NEGATIVE_INFINITY;
    double lowestHigh = Double.POSITIVE_INFINITY;
    for (Mixture season : standing.seasons().values()) {
      highestLow = Math.max(highestLow, season.quantile(IN_80[0]));
      lowestHigh = Math.min(lowestHigh, season.quantile(IN_80[1]));
    }
    return perMille(highestLow) > perMille(lowestHigh);
  }

  private static String basis(Basis basis) {
    return "It rests on "
        + counted(basis.fruits(), "fruit")
        + " of "
        + counted(basis.lots(), "lot")
        + ", "
        + counted(basis.tasters(), "taster")
        + ", "
        + counted(basis.sessions(), "session")
        + " and "
        + counted(basis.kitchenScores(), "kitchen taste")
        + ".";
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static String small(int count) {
    return count < SMALL.length ? SMALL[count] : String.valueOf(count);
  }

  private static int perMille(double value) {
    return (int) Math.round(1000 * value);
  }
}
