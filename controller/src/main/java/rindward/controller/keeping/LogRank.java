package rindward.controller.keeping;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether one group of fruits keeps longer than another (the log-rank test of Mantel 1966, with the
 * variance of the hypergeometric distribution).
 *
 * @param observed fruits lost in the first group
 * @param expected fruits the first group would have lost if both kept alike
 * @param chiSquared the test's statistic, one degree of freedom
 * @param p chance of a difference this large between groups that keep alike
 */
public record LogRank(int observed, double expected, double chiSquared, PValue p) {
  /**
   * Compares two groups; empty if one has too few fruits, if both together have too few losses, or
   * if the two were never watched at the same time while one was lost.
   */
  public static Optional<LogRank> between(Survival first, Survival second) {
    int lost = first.count(Ending.LOST) + second.count(Ending.LOST);
    return first.isEnoughForShare() && second.isEnoughForShare() && lost >= Survival.FEWEST_LOSSES
        ? compare(first, second)
        : Optional.empty();
  }

  /** Returns the finding as one sentence about two named groups. */
  public String sentence(String first, String second) {
    String how = " (log-rank " + p.words() + ").";
    if (!p.isSignificant()) {
      return "No difference in keeping shown between " + first + " and " + second + how;
    }
    boolean firstKeeps = observed < expected;
    return (firstKeeps ? first : second)
        + " keeps longer than "
        + (firstKeeps ? second : first)
        + how;
  }

  private static Optional<LogRank> compare(Survival first, Survival second) {
    List<Fate> all = Stream.concat(first.fates().stream(), second.fates().stream()).toList();
    double expected = 0;
    double variance = 0;
    for (int day : lossDays(first, second)) {
      double atRisk = Survival.atRisk(all, day);
      double share = Survival.atRisk(first.fates(), day) / atRisk;
      double lost = Survival.lostOn(all, day);
      expected += share * lost;
      if (atRisk > 1) {
        variance += share * (1 - share) * lost * (atRisk - lost) / (atRisk - 1);
      }
    }
    if (variance == 0) {
      return Optional.empty();
    }
    int observed = first.count(Ending.LOST);
    double chiSquared = (observed - expected) * (observed - expected) / variance;
    PValue p = new PValue(ChiSquaredDistribution.of(1).survivalProbability(chiSquared));
    return Optional.of(new LogRank(observed, expected, chiSquared, p));
  }

  private static int[] lossDays(Survival first, Survival second) {
    return IntStream.concat(
            first.steps().stream().mapToInt(SurvivalStep::day),
            second.steps().stream().mapToInt(SurvivalStep::day))
        .sorted()
        .distinct()
        .toArray();
  }
}
