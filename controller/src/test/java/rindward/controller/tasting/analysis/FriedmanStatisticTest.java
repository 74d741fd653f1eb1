package rindward.controller.tasting.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The panel's test against published examples; the source stands beside each. */
class FriedmanStatisticTest {

  /** Hollander and Wolfe 1973, rounding first base; R's help page of friedman.test. */
  private static final String ROUNDING =
      "540 550 555; 585 570 575; 520 560 550; 555 550 540; 590 585 570; 545 555 560; 540 540 535;"
          + " 545 550 535; 525 515 500; 585 580 570; 525 520 510; 565 555 545; 560 535 545;"
          + " 505 500 495; 550 550 540; 545 555 550; 555 555 535; 545 550 555; 550 545 525;"
          + " 565 560 540; 570 565 555; 630 630 625";

  /** Conover, Practical Nonparametric Statistics, 3rd ed. 1999, p. 372; ranks times ten. */
  private static final String GRASS =
      "40 30 20 10; 40 20 30 10; 30 15 15 40; 30 10 20 40; 40 20 10 30; 20 20 20 40; 10 30 20 40;"
          + " 20 40 10 30; 35 10 20 35; 40 10 30 20; 40 20 30 10; 35 10 20 35";

  /** NAG Library, routine g08aef, example; ranks times ten. */
  private static final String NAG =
      "10 30 20; 20 30 10; 10 30 20; 10 20 30; 30 10 20; 20 30 10; 30 20 10; 10 30 20; 30 10 20;"
          + " 30 10 20; 20 30 10; 20 30 10; 30 20 10; 20 30 10; 25 25 10; 30 20 10; 30 20 10;"
          + " 20 30 10";

  /** R package irr, data set anxiety: three raters, twenty subjects. */
  private static final String ANXIETY =
      "3 3 3 4 5 5 2 3 5 2 2 6 1 5 2 2 1 2 4 3; 3 6 4 6 2 4 2 4 3 3 2 3 3 3 2 2 1 3 3 4;"
          + " 2 1 4 4 3 2 1 6 1 1 1 2 3 3 1 1 3 3 2 2";

  @Test
  void roundingFirstBase_isRs() {
    FriedmanStatistic test = test(ROUNDING);
    assertThat(test.rankSums()).containsExactly(53, 47, 32);
    assertThat(test.uncorrected()).isCloseTo(10.6363636364, within(1e-9));
    assertThat(test.corrected()).isCloseTo(11.1428571429, within(1e-9));
    assertThat(test.chiSquaredP()).isCloseTo(0.00380504078, within(1e-10));
    assertThat(test.kendallW()).isCloseTo(0.25324675, within(1e-8));
  }

  @Test
  void grass_isConovers() {
    FriedmanStatistic test = test(GRASS);
    assertThat(test.rankSums()).containsExactly(38, 23.5, 24.5, 34);
    assertThat(test.uncorrected()).isCloseTo(7.625, within(1e-9));
    assertThat(test.corrected()).isCloseTo(8.09734513274, within(1e-9));
    assertThat(test.chiSquaredP()).isCloseTo(0.0440421378, within(1e-9));
  }

  @Test
  void nag_isPublishedWithoutTheCorrection() {
    FriedmanStatistic test = test(NAG);
    assertThat(test.rankSums()).containsExactly(39.5, 42.5, 26);
    assertThat(test.uncorrected()).isCloseTo(8.583, within(0.0005));
    assertThat(test.corrected()).isCloseTo(8.7042253521, within(1e-9));
    assertThat(test.chiSquaredP()).isCloseTo(0.0128795735, within(1e-9));
  }

  @Test
  void kendallW_ofTwentySubjects_isThatOfThePackageIrr() {
    FriedmanStatistic test = test(ANXIETY);
    assertThat(test.kendallW()).isCloseTo(0.53965688, within(1e-8));
    assertThat(test.chiSquaredP()).isCloseTo(0.0428834731, within(1e-9));
  }

  /**
   * The smallest statistic that is significant at 5 %, with its exact chance: tables of Friedman's
   * statistic, Hollander and Wolfe 1973 table A.15 (from memory), digits recomputed by counting.
   */
  @ParameterizedTest
  @CsvSource({
    "3 1 2; 3 1 2; 3 1 2, 6.0, 0.027778",
    "1 2 3; 1 3 2; 1 3 2; 1 3 2, 6.5, 0.041667",
    "2 3 1; 1 3 2; 2 3 1; 2 3 1; 3 2 1, 6.4, 0.039352",
    "3 2 1; 2 1 3; 3 1 2; 3 2 1; 3 1 2; 3 1 2, 7.0, 0.028935",
    "3 2 1; 1 2 3; 3 1 2; 3 2 1; 2 3 1; 3 2 1; 3 2 1; 3 2 1, 6.25, 0.046907",
    "3 2 1; 2 3 1; 2 3 1; 1 3 2; 2 3 1; 1 2 3; 3 2 1; 1 3 2; 3 2 1; 3 2 1, 6.2, 0.045560",
    "3 4 1 2; 3 4 2 1; 4 3 2 1, 7.4, 0.032986",
    "1 4 3 2; 1 4 3 2; 2 4 1 3; 1 3 2 4, 7.8, 0.036386",
    "2 3 4 1; 1 4 2 3; 2 3 4 1; 3 4 2 1; 1 3 4 2, 7.8, 0.044340"
  })
  void smallPanels_haveTheExactChance(String ranks, double statistic, double p) {
    FriedmanStatistic test = test(ranks);
    assertThat(test.corrected()).isCloseTo(statistic, within(1e-9));
    assertThat(test.permutation().basis()).isEqualTo(PermutationP.Basis.EXACT);
    assertThat(test.permutation().p().value()).isCloseTo(p, within(5e-7));
  }

  @Test
  void threeTastersOfSevenSamples_areCountedToTheArrangement() {
    FriedmanStatistic test = test("8 8 7 6 6 5 3; 7 8 6 7 5 6 4; 8 7 7 5 6 4 3");
    assertThat(test.rankSums()).containsExactly(19, 19, 14, 12, 9.5, 7.5, 3);
    assertThat(test.permutation())
        .isEqualTo(new PermutationP(PermutationP.Basis.EXACT, 2338, 3_175_200));
    assertThat(test.permutation().words())
        .isEqualTo(
            "exact p 0.000736: 2338 of 3,175,200 arrangements of the mid-ranks, one panelist held");
  }

  @Test
  void arrangementsBeyondCounting_areNotSpelledOut() {
    assertThat(test(ROUNDING).permutation().words())
        .startsWith("exact p 0.00")
        .endsWith(": every arrangement of the mid-ranks counted");
    assertThat(test("1 2 3 4 5 6; 1 2 3 4 5 6; 1 2 3 4 5 6").permutation().words())
        .isEqualTo(
            "exact p below 0.0001: 1 of 518,400 arrangements of the mid-ranks, one panelist held");
  }

  @Test
  void sixTastersOfEightSamples_areSimulatedAndSaidToBe() {
    FriedmanStatistic test =
        test(
            "1 2 3 4 5 6 7 8; 8 7 6 5 4 3 2 1; 2 1 4 3 6 5 8 7; 5 6 7 8 1 2 3 4; 1 3 5 7 2 4 6 8;"
                + " 8 6 4 2 7 5 3 1");
    assertThat(test.permutation().basis()).isEqualTo(PermutationP.Basis.SIMULATED);
    assertThat(test.permutation().words()).endsWith("by 41,666 random arrangements");
  }

  @Test
  void simulation_comesCloseToTheExactChance() {
    int[][] ranks = {{2, 4, 6, 8}, {4, 2, 6, 8}, {2, 6, 4, 8}, {4, 6, 2, 8}};
    double exact = Arrangements.exact(ranks).orElseThrow().p().value();
    // Four standard errors of 100,000 draws.
    double tolerance = 4 * Math.sqrt(exact * (1 - exact) / 100_000);
    assertThat(Arrangements.simulated(ranks).p().value()).isCloseTo(exact, within(tolerance));
  }

  @Test
  void nothingToTest_isEmpty() {
    assertThat(FriedmanStatistic.of(table("7 6 5"))).isEmpty();
    assertThat(FriedmanStatistic.of(table("7; 6"))).isEmpty();
    assertThat(FriedmanStatistic.of(table("7 7 7; 5 5 5"))).isEmpty();
  }

  private static FriedmanStatistic test(String rows) {
    return FriedmanStatistic.of(table(rows)).orElseThrow();
  }

  static ScoreTable table(String rows) {
    List<List<Integer>> scores = new ArrayList<>();
    for (String row : rows.split(";")) {
      scores.add(Arrays.stream(row.trim().split(" ")).map(Integer::valueOf).toList());
    }
    return new ScoreTable(
        IntStream.range(0, scores.size()).mapToObj(i -> "taster " + (i + 1)).toList(),
        IntStream.range(0, scores.get(0).size()).mapToObj(i -> "" + (char) ('A' + i)).toList(),
        scores);
  }
}
