package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import org.junit.jupiter.api.Test;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.readiness.Verdict.Expected;

/**
 * What cures, what does not, and when it is told to be done: ten to fourteen warm days (the
 * guide's), less what it has, at the pace of the last day's air.
 */
class CureQuestionTest {
  @Test
  void freshLot_isExpectedInTheGuidesDays() {
    assertThat(expected(0.01))
        .isEqualTo(new Expected("cured, if it stays as it is", day(10.01), day(14.01)));
  }

  @Test
  void halfCured_isExpectedInHalfOfThem() {
    assertThat(expected(5))
        .isEqualTo(new Expected("cured, if it stays as it is", day(10), day(12)));
  }

  @Test
  void partOfADay_countsAsAWholeOne() {
    // At 30 % there are 7 and 9.8 days left.
    assertThat(expected(3))
        .isEqualTo(new Expected("cured, if it stays as it is", day(10), day(13)));
  }

  @Test
  void cured_isNoLongerAsked() {
    assertThat(lot().verdict("K4T", 10.5).state()).isNotEqualTo(State.CURING);
  }

  /** At 21 C a cure takes 14 days (the guide's). */
  @Test
  void slowerAir_movesTheDate() {
    Trial trial = in(21_000, 76_000);
    assertThat(trial.verdict("K4T", 7).expected())
        .contains(new Expected("cured, if it stays as it is", day(14), day(17)));
  }

  @Test
  void coldRoom_doesNotCure_andTellsWhatItWaitsFor() {
    Verdict verdict = in(11_000, 76_000).verdict("K4T", 5);
    assertThat(verdict.words()).isEqualTo("not curing: too cold (needs 27 C)");
    assertThat(verdict.expected()).isEmpty();
    assertThat(verdict.wouldChange())
        .startsWith(
            "It is cured 10 to 14 days after it is moved to where a probe shows 27 to 29 C.");
  }

  @Test
  void hotRoom_andSoakingAir_cureNothingEither() {
    assertThat(in(36_000, 60_000).verdict("K4T", 5).words())
        .isEqualTo("not curing: too warm (needs 27 to 29 C)");
    assertThat(in(28_000, 99_000).verdict("K4T", 5).words())
        .isEqualTo("not curing: too damp or too dry (needs 75 to 80 %)");
  }

  /** Air that would take years for a cure cures nothing: at 15.2 C it is 480 days. */
  @Test
  void barelyWarmRoom_isNotCuringEither() {
    assertThat(in(15_200, 76_000).verdict("K4T", 5).words())
        .isEqualTo("not curing: too cold (needs 27 C)");
    assertThat(in(17_000, 76_000).verdict("K4T", 5).state()).isEqualTo(State.CURING);
  }

  @Test
  void placeWithoutProbe_isNotKnown_andNeverMeasured() {
    for (double day : new double[] {0, 0.5, 9}) {
      Verdict verdict =
          new Trial()
              .said(new Harvested("K4T", "kabocha", "", 20, "porch", HARVEST))
              .verdict("K4T", day);
      assertThat(verdict.words()).isEqualTo("not known: no probe here");
      assertThat(verdict.sureness()).isNotEqualTo(Sureness.MEASURED);
      assertThat(verdict.expected()).isEmpty();
    }
  }

  @Test
  void movedOutOfTheWarm_noLongerCures_fromTheFirstHour() {
    Trial trial =
        in(28_000, 76_000)
            .place("storage", 11_000, 60_000)
            .said(new Moved("K4T", "storage", day(5)));
    assertThat(trial.verdict("K4T", 5.1).words()).isEqualTo("not curing: too cold (needs 27 C)");
    assertThat(trial.verdict("K4T", 5.1).reasons())
        .contains("It was moved at 50 % of a cure; it needs a whole one.");
  }

  @Test
  void cureThatIsOnlyTold_isNoMeasuredTimeInARange() {
    Trial trial =
        new Trial()
            .said(new Harvested("K4T", "kabocha", "", 3, "porch", HARVEST))
            .said(new Attested("K4T", "stem dry", day(13)));
    assertThat(trial.lived("K4T", 100).isCureOnlyTold()).isTrue();
    assertThat(trial.lived("K4T", 100).account().curing().elapsedMillis())
        .isEqualTo(13 * 86_400_000L);
    assertThat(trial.lived("K4T", 100).account().keeping().elapsedMillis())
        .isEqualTo(87 * 86_400_000L);
  }

  private static Trial in(int milliC, int milliPct) {
    return new Trial()
        .place("curing", milliC, milliPct)
        .said(new Harvested("K4T", "kabocha", "", 20, "curing", HARVEST));
  }

  private static Expected expected(double day) {
    Verdict verdict = lot().verdict("K4T", day);
    assertThat(verdict.state()).isEqualTo(State.CURING);
    return verdict.expected().orElseThrow();
  }

  private static Trial lot() {
    return new Trial()
        .place("curing", 28_000, 76_000)
        .said(new Harvested("K4T", "kabocha", "", 20, "curing", HARVEST));
  }
}
