package rindward.controller.tasting.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * Whether a panel tells its samples apart (Friedman 1937): each panelist only ranks, so that one
 * who gives high scores weighs no more than one who gives low ones. With b panelists, k samples and
 * rank sums R:
 *
 * <pre>S = 12 / (b k (k+1)) sum R^2 - 3 b (k+1),     S' = S / (1 - sum(t^3 - t) / (b k (k^2-1)))
 * </pre>
 *
 * S' corrects for ties of t samples (Conover 1999).
 *
 * @param panelists how many, b, at least two
 * @param doubledRankSums twice each sample's rank sum; the lowest score has rank one
 * @param uncorrected S
 * @param corrected S'
 * @param permutation the chance that counts, whatever the size of the panel
 */
public record FriedmanStatistic(
    int panelists,
    List<Integer> doubledRankSums,
    double uncorrected,
    double corrected,
    PermutationP permutation) {
  public FriedmanStatistic {
    doubledRankSums = List.copyOf(doubledRankSums);
  }

  /**
   * Tests a table; empty for a single panelist or sample, and if every panelist gave all samples
   * the same score.
   */
  public static Optional<FriedmanStatistic> of(ScoreTable table) {
    int b = table.panelists().size();
    int k = table.samples().size();
    int[][] ranks = MidRanks.of(table);
    double ties = Arrays.stream(ranks).mapToLong(MidRanks::tieTerm).sum();
    double untied = 1 - ties / ((double) b * k * (k * k - 1));
    if (b < 2 || k < 2 || untied <= 0) {
      return Optional.empty();
    }
    int[] sums = new int[k];
    for (int[] row : ranks) {
      Arrays.setAll(sums, i -> sums[i] + row[i]);
    }
    double squares = Arrays.stream(sums).mapToDouble(sum -> sum * sum / 4.0).sum();
    double uncorrected = 12 * squares / (b * k * (k + 1.0)) - 3 * b * (k + 1.0);
    return Optional.of(
        new FriedmanStatistic(
            b,
            Arrays.stream(sums).boxed().toList(),
            uncorrected,
            uncorrected / untied,
            Arrangements.count(ranks)));
  }

  /** Returns the rank sum of each sample, in the order of the table. */
  public double[] rankSums() {
    return doubledRankSums.stream().mapToDouble(sum -> sum / 2.0).toArray();
  }

  /**
   * Returns the chance by the chi-squared distribution, for comparison with other programs. It is
   * wrong for small panels; {@link #permutation} is what conclusions rest on.
   */
  public double chiSquaredP() {
    return ChiSquaredDistribution.of(doubledRankSums.size() - 1).survivalProbability(corrected);
  }

  /**
   * Returns how far the panelists agree (Kendall's W, corrected for ties): zero not at all, one in
   * everything.
   */
  public double kendallW() {
    return corrected / (panelists * (doubledRankSums.size() - 1));
  }
}
