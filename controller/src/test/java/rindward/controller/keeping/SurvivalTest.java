package rindward.controller.keeping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Survival against a published worked example: weeks of remission of 21 children on 6-MP and 21 on
 * placebo (Freireich et al. 1963, Blood 21, 699-716), with the estimates, errors and intervals that
 * G. Rodriguez prints for them (The Gehan Survival Data, grodri.github.io/survival/gehan) and the
 * log-rank result of Kleinbaum and Klein, Survival Analysis, ch. 2.
 */
class SurvivalTest {
  private static final Survival TREATED =
      follow(
          new int[] {6, 6, 6, 7, 10, 13, 16, 22, 23},
          new int[] {6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35});
  private static final Survival PLACEBO =
      follow(
          new int[] {1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23},
          new int[] {});

  @Test
  void nothingIsSaidByDayNought() {
    Survival today = Survival.of(List.of(new Fate(0, 20, Ending.STILL_SOUND)));
    assertThat(today.sentence()).isEqualTo("None of 20 fruits lost; not watched for a day yet.");
    assertThat(today.halfLife().words()).isEqualTo("too early for a half-life");
  }

  @Test
  void sharesAndGreenwoodErrorsAreThePublishedOnes() {
    assertThat(TREATED.steps())
        .extracting(SurvivalStep::day)
        .containsExactly(6, 7, 10, 13, 16, 22, 23);
    assertThat(TREATED.steps())
        .extracting(s -> rounded(s.survival()))
        .containsExactly(0.8571, 0.8067, 0.7529, 0.6902, 0.6275, 0.5378, 0.4482);
    assertThat(TREATED.steps())
        .extracting(s -> rounded(s.standardError()))
        .containsExactly(0.0764, 0.0869, 0.0963, 0.1068, 0.1141, 0.1282, 0.1346);
  }

  @Test
  void intervalsAreThePublishedOnes() {
    Interval first = TREATED.steps().get(0).interval().orElseThrow();
    assertThat(rounded(first.low())).isEqualTo(0.6197);
    assertThat(rounded(first.high())).isEqualTo(0.9516);
    Interval last = TREATED.steps().get(6).interval().orElseThrow();
    assertThat(rounded(last.low())).isEqualTo(0.1881);
    assertThat(rounded(last.high())).isEqualTo(0.6801);
  }

  @Test
  void halfLife_isThePublishedMedian() {
    assertThat(TREATED.halfLife()).isEqualTo(new HalfLife(HalfLife.State.REACHED, 23));
    assertThat(PLACEBO.halfLife()).isEqualTo(new HalfLife(HalfLife.State.REACHED, 8));
  }

  @Test
  void twentyFruits_mostEatenSound_keepElevenOfFourteenths() {
    Survival lot =
        Survival.of(
            List.of(
                new Fate(60, 3, Ending.USED_SOUND),
                new Fate(120, 3, Ending.USED_SOUND),
                new Fate(150, 1, Ending.LOST),
                new Fate(180, 1, Ending.LOST),
                new Fate(200, 1, Ending.LOST),
                new Fate(210, 3, Ending.USED_SOUND),
                new Fate(240, 8, Ending.STILL_SOUND)));
    assertThat(lot.at(240)).isCloseTo(11.0 / 14, within(1e-12));
    assertThat(lot.at(149)).isEqualTo(1);
    assertThat(lot.halfLife()).isEqualTo(new HalfLife(HalfLife.State.NOT_REACHED, 240));
    assertThat(lot.sentence())
        .startsWith("79 % keep past day 200 (")
        .endsWith("; 3 of 20 lost; half-life not reached by day 240.");
  }

  @Test
  void fewFruits_areNamedAndNotRated() {
    Survival lot =
        Survival.of(List.of(new Fate(90, 1, Ending.LOST), new Fate(120, 2, Ending.STILL_SOUND)));
    assertThat(lot.isEnoughForShare()).isFalse();
    assertThat(lot.sentence()).isEqualTo("2 of 3 sound on day 120, 1 lost.");
  }

  @Test
  void manyFruitsAndNoLoss_areCounted() {
    Survival lot = Survival.of(List.of(new Fate(120, 9, Ending.STILL_SOUND)));
    assertThat(lot.sentence()).isEqualTo("None of 9 fruits lost by day 120.");
  }

  @Test
  void halfLife_onTooFewLosses_isNotTold() {
    Survival lot =
        Survival.of(List.of(new Fate(50, 6, Ending.USED_SOUND), new Fate(100, 2, Ending.LOST)));
    assertThat(lot.at(100)).isZero();
    assertThat(lot.halfLife().state()).isEqualTo(HalfLife.State.TOO_FEW_LOST);
  }

  private static Survival follow(int[] lost, int[] watched) {
    List<Fate> fates = new ArrayList<>();
    for (int day : lost) {
      fates.add(new Fate(day, 1, Ending.LOST));
    }
    for (int day : watched) {
      fates.add(new Fate(day, 1, Ending.STILL_SOUND));
    }
    return Survival.of(fates);
  }

  private static double rounded(double share) {
    return Math.round(share * 10_000) / 10_000.0;
  }
}
