package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SkillingsMackTest {
  private static final int NONE = ScoreTable.NOT_TASTED;

  /**
   * Minutes (times ten) of nine people putting a thing together in four ways, three of them
   * missing: Skillings and Mack 1981, as given with the R package Skillings.Mack 1.10, which prints
   * T = 15.493049.
   */
  private static final ScoreTable ASSEMBLY =
      table(
          List.of(32, 41, 38, 42),
          List.of(31, 39, 34, 40),
          List.of(43, 35, 46, 48),
          List.of(35, 36, 39, 40),
          List.of(36, 42, 37, 39),
          List.of(45, 47, 37, NONE),
          List.of(NONE, 42, 34, NONE),
          List.of(43, 46, 44, 49),
          List.of(35, NONE, 37, 39));

  @Test
  void publishedExample_isAgreedWith() {
    SkillingsMack test = SkillingsMack.of(ASSEMBLY).orElseThrow();
    assertThat(test.statistic()).isCloseTo(15.493049, within(5e-7));
    // The chi-squared distribution of three degrees of freedom gives 0.00144 (the same package).
    assertThat(test.permutation().p().value()).isLessThan(0.002);
  }

  @Test
  void withoutAMissingCupOrATie_itIsFriedmans() {
    ScoreTable table =
        table(List.of(1, 2, 3, 4), List.of(2, 1, 4, 3), List.of(1, 3, 2, 4), List.of(1, 2, 4, 3));
    assertThat(SkillingsMack.of(table).orElseThrow().statistic())
        .isCloseTo(FriedmanStatistic.of(table).orElseThrow().uncorrected(), within(1e-9));
  }

  @Test
  void sampleThatNobodyTasted_isHeldApartFromNothing() {
    ScoreTable table =
        table(
            List.of(9, 1, NONE),
            List.of(8, 2, NONE),
            List.of(9, 3, NONE),
            List.of(7, 1, NONE),
            List.of(9, 2, NONE),
            List.of(8, 1, NONE),
            List.of(9, 1, NONE));
    SkillingsMack test = SkillingsMack.of(table).orElseThrow();
    assertThat(test.pairs(table.samples()).differences())
        .containsExactly(new RankGroups.Difference("S0", "S1"));
  }

  @Test
  void everyoneGaveAllTheSame_isNotTested() {
    assertThat(SkillingsMack.of(table(List.of(5, 5, NONE), List.of(NONE, 3, 3)))).isEmpty();
  }

  @SafeVarargs
  private static ScoreTable table(List<Integer>... rows) {
    return new ScoreTable(
        IntStream.range(0, rows.length).mapToObj(i -> "taster " + i).toList(),
        IntStream.range(0, rows[0].size()).mapToObj(i -> "S" + i).toList(),
        List.of(rows));
  }
}
