package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import org.junit.jupiter.api.Test;
import rindward.controller.journal.FrostNoted;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;

/** A frost hurts fruit that lay bare in -2.8 C (27 F, Illinois extension 2004), or was soaked. */
class FrostDamageNotedTest {
  @Test
  void bareFruit_isHurtFromTheDangerOn_coveredFruitIsNot() {
    assertThat(FrostDamage.hurt(frost(-2_800, false, false))).isTrue();
    assertThat(FrostDamage.hurt(frost(-2_799, false, false))).isFalse();
    assertThat(FrostDamage.hurt(frost(-6_000, true, false))).isFalse();
    assertThat(FrostDamage.hurt(frost(-900, true, true))).isTrue();
    assertThat(FrostDamage.hurt(frost(-900, false, true))).isTrue();
  }

  @Test
  void theVerdictSaysWhichFrostItWas() {
    assertThat(afterFrost(frost(-3_000, false, false)).state()).isEqualTo(State.INJURED);
    assertThat(afterFrost(frost(-3_000, false, false)).reasons())
        .contains("It lay bare in a frost of -3.0 C.");
    assertThat(afterFrost(frost(-3_000, true, false)).state()).isEqualTo(State.READY);
  }

  private static Verdict afterFrost(FrostNoted frost) {
    return new Trial()
        .place("curing", 28_000, 76_000)
        .place("storage", 12_500, 60_000)
        .said(new Harvested("K4T", "kabocha", "", 20, "curing", HARVEST))
        .said(frost)
        .said(new Moved("K4T", "storage", day(11)))
        .verdict("K4T", 20);
  }

  private static FrostNoted frost(int minimumMilliC, boolean covered, boolean waterSoaked) {
    return new FrostNoted("K4T", minimumMilliC, 30, covered, waterSoaked, HARVEST);
  }
}
