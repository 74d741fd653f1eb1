package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import org.junit.jupiter.api.Test;
import rindward.controller.journal.Harvested;
import rindward.controller.readiness.Verdict.Expected;

/** When a lot is told to be cured: ten to fourteen warm days (the guide's), less what it has. */
class CureQuestionTest {
  @Test
  void freshLot_isExpectedInTheGuidesDays() {
    assertThat(expected(0)).isEqualTo(new Expected("cured, if it stays warm", day(10), day(14)));
  }

  @Test
  void halfCured_isExpectedInHalfOfThem() {
    assertThat(expected(5)).isEqualTo(new Expected("cured, if it stays warm", day(10), day(12)));
  }

  @Test
  void partOfADay_countsAsAWholeOne() {
    // At 30 % there are 7 and 9.8 days left.
    assertThat(expected(3)).isEqualTo(new Expected("cured, if it stays warm", day(10), day(13)));
  }

  @Test
  void cured_isNoLongerAsked() {
    assertThat(lot().verdict("K4T", 10.5).state()).isNotEqualTo(State.CURING);
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
