package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.tasting.analysis.RankGroups.Difference;

/** All pairs compared at once, against published critical differences. */
class RankGroupsTest {

  /** Newell and MacFarlane 1987, J. Food Sci. 52, 1721-1725: 5 % critical differences, k 3 to 8. */
  @ParameterizedTest
  @CsvSource({
    "5, 8, 11, 14, 17, 21, 24",
    "8, 10, 14, 18, 22, 26, 30",
    "10, 11, 15, 20, 24, 29, 34",
    "12, 12, 17, 22, 27, 32, 37",
    "20, 15, 21, 28, 34, 41, 47"
  })
  void criticalDifferences_areThePublishedOnes(
      int panelists, int k3, int k4, int k5, int k6, int k7, int k8) {
    int[] published = {k3, k4, k5, k6, k7, k8};
    for (int k = 3; k <= 8; k++) {
      assertThat((int) Math.ceil(RankGroups.criticalDifference(panelists, k)))
          .as("%d samples", k)
          .isEqualTo(published[k - 3]);
    }
  }

  /** The studentized range at 5 % and infinite degrees of freedom, as every table prints it. */
  @ParameterizedTest
  @CsvSource({"2, 2.772", "3, 3.314", "4, 3.633", "5, 3.858", "7, 4.170", "8, 4.286", "10, 4.474"})
  void studentizedRange_isThePublishedOne(int k, double range) {
    assertThat(StudentizedRange.upperFivePercent(k)).isCloseTo(range, within(0.0005));
  }

  @Test
  void threeTastersOfSevenSamples_holdOnlyTheTwoBestApartFromTheLast() {
    RankGroups groups = groups("8 8 7 6 6 5 3; 7 8 6 7 5 6 4; 8 7 7 5 6 4 3");
    assertThat(groups.differences())
        .containsExactly(new Difference("A", "G"), new Difference("B", "G"));
    assertThat(groups.groups())
        .containsExactly(List.of("A", "B", "C", "D", "E", "F"), List.of("C", "D", "E", "F", "G"));
  }

  @Test
  void iso8587AnnexA_holdsAAndEApartFromBAndC_onlyByItsUncorrectedDifference() {
    // ISO 8587:1988 Annex A: rank sums 17, 31, 32, 23, 17 of 8 assessors; its least significant
    // difference of 12.4 makes no allowance for ten pairs, the corrected one does: 17.3 needed.
    assertThat(RankGroups.criticalDifference(8, 5)).isCloseTo(17.25, within(0.01));
  }

  private static RankGroups groups(String rows) {
    ScoreTable table = FriedmanStatisticTest.table(rows);
    return RankGroups.of(table.samples(), FriedmanStatistic.of(table).orElseThrow());
  }
}
