package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.Optional;
import rindward.controller.keeping.PValue;

/**
 * Whether a panel tells its samples apart, and which pairs: Friedman's test where every cup was
 * tasted, that of Skillings and Mack where some were not.
 *
 * @param tasters who scored at least two samples
 * @param permutation the chance that counts, whatever the size of the panel
 * @param agreement Kendall's W; empty where cups are missing
 * @param rankSums of the samples, in the order of the table; none where cups are missing
 * @param pairs which samples are held apart, if the test says that there are any
 * @param method the test by its name and source
 */
public record PanelTest(
    int tasters,
    PermutationP permutation,
    Optional<Double> agreement,
    List<Double> rankSums,
    RankGroups pairs,
    String method) {
  public PanelTest {
    rankSums = List.copyOf(rankSums);
  }

  /** Tests a table; empty where there is nothing that could differ. */
  static Optional<PanelTest> of(ScoreTable table) {
    return table.isComplete()
        ? FriedmanStatistic.of(table).map(test -> of(table, test))
        : SkillingsMack.of(table).map(test -> of(table, test));
  }

  /** Returns the chance of so much difference where there is none. */
  public PValue p() {
    return permutation.p();
  }

  private static PanelTest of(ScoreTable table, FriedmanStatistic test) {
    return new PanelTest(
        test.panelists(),
        test.permutation(),
        Optional.of(test.kendallW()),
        test.doubledRankSums().stream().map(sum -> sum / 2.0).toList(),
        RankGroups.of(table.samples(), test),
        "Friedman 1937, ties allowed for; pairs by Newell and MacFarlane 1987");
  }

  private static PanelTest of(ScoreTable table, SkillingsMack test) {
    return new PanelTest(
        test.panelists(),
        test.permutation(),
        Optional.empty(),
        List.of(),
        test.pairs(table.samples()),
        "Skillings and Mack 1981, for cups that are missing; chance and pairs from the scores dealt"
            + " out anew within each taster");
  }
}
