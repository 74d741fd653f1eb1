package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.GUIDE;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.journal.Grade;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.RipenessNoted;
import rindward.controller.journal.RipenessSign;
import rindward.controller.readiness.Ripeness.Level;

/** Kabocha is ripe from 40 days after fruit set on, and ripens inside from 30, surely from 35. */
class RipenessTest {
  @ParameterizedTest
  @CsvSource({
    "29, NEVER",
    "30, DOUBTFUL",
    "34, DOUBTFUL",
    "35, RIPENS",
    "39, RIPENS",
    "40, RIPE",
    "55, RIPE"
  })
  void daysSinceFruitSet_tellAtTheGuidesLimits(int days, Level level) {
    assertThat(level(picked(null, 20).said(tagged(days, days)))).isEqualTo(level);
  }

  @Test
  void whatLookedRipe_isGivenTheLaterDay() {
    assertThat(level(picked(Grade.RIPE, 20).said(tagged(36, 40)))).isEqualTo(Level.RIPE);
    assertThat(level(picked(Grade.RIPE, 20).said(tagged(36, 39)))).isEqualTo(Level.RIPENS);
    assertThat(level(picked(Grade.DOUBTFUL, 20).said(tagged(36, 40)))).isEqualTo(Level.RIPENS);
  }

  @Test
  void daysThatContradictEachOther_leaveTheWholeSpan() {
    Trial trial = picked(null, 20).said(tagged(20, 25)).said(tagged(45, 50));
    assertThat(level(trial)).isEqualTo(Level.DOUBTFUL);
    assertThat(ripeness(trial).reasons())
        .contains("It was picked 20 to 50 days after fruit set; kabocha is ripe from 40 to 50.");
    assertThat(level(picked(null, 20).said(tagged(30, 45)).said(tagged(40, 60))))
        .isEqualTo(Level.RIPE);
  }

  /** One seed that is flat says nothing of nineteen others: most is known from four alike on. */
  @Test
  void unripeFruit_isNotItsLot_untilMostOfItIsUnripeBeyondDoubt() {
    assertThat(level(picked(null, 20).said(cut(1)))).isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(null, 20).said(cut(3)))).isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(null, 20).said(cut(4)))).isEqualTo(Level.NEVER);
    assertThat(level(picked(null, 4).said(cut(2)))).as("half of them").isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(null, 5).said(cut(3)))).as("most of them").isEqualTo(Level.NEVER);
    assertThat(level(picked(null, 20).said(cut(1)).said(tagged(34, 34)))).isEqualTo(Level.NEVER);
    assertThat(level(picked(null, 20).said(cut(2)).said(full(1)).said(tagged(34, 34))))
        .isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(null, 20).said(cut(1)).said(tagged(35, 35)))).isEqualTo(Level.DOUBTFUL);
    assertThat(ripeness(picked(null, 20).said(cut(2))).reasons())
        .contains("Of 2 fruits cut, none was ripe: between 0 and 66 in 100 of the lot are.");
  }

  @Test
  void ripeAndUnripeFruits_tellAShare_andHowFarItMayBeOff() {
    Trial trial = picked(Grade.RIPE, 20).said(cut(1)).said(full(2));
    assertThat(level(trial)).isEqualTo(Level.DOUBTFUL);
    assertThat(ripeness(trial).reasons())
        .contains("Of 3 fruits cut, 2 were ripe: between 21 and 94 in 100 of the lot are.");
    assertThat(level(picked(Grade.RIPE, 20).said(cut(1)).said(full(9)))).isEqualTo(Level.RIPE);
  }

  /** Nobody cuts a whole lot to look at its seeds: a note without a number is of one fruit. */
  @Test
  void seedsNotedWithoutANumber_areThoseOfOneFruit() {
    assertThat(level(picked(null, 20).said(cut(0)))).isEqualTo(Level.DOUBTFUL);
    assertThat(ripeness(picked(null, 20).said(cut(0))).reasons())
        .contains(
            "One fruit was cut, and it was not ripe: between 0 and 79 in 100 of the lot are.");
  }

  @Test
  void deadVines_castDoubtOnWhatNobodyGraded() {
    RipenessNoted dead = new RipenessNoted("K4T", RipenessSign.VINES_DEAD, 0, 60, 0, day(1));
    assertThat(level(picked(null, 20).said(dead))).isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(Grade.RIPE, 20).said(dead))).isEqualTo(Level.RIPE);
    assertThat(ripeness(picked(null, 20).said(dead)).reasons())
        .contains("The vines died early, which leaves fruit unripe.");
    assertThat(level(picked(Grade.GREEN, 20))).isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(Grade.DOUBTFUL, 20))).isEqualTo(Level.DOUBTFUL);
    assertThat(level(picked(null, 20))).isEqualTo(Level.RIPE);
  }

  private static Level level(Trial trial) {
    return ripeness(trial).level();
  }

  private static Ripeness ripeness(Trial trial) {
    return Ripeness.of(trial.lot("K4T", 30), GUIDE.crop("kabocha").orElseThrow());
  }

  private static Trial picked(@Nullable Grade grade, int count) {
    return new Trial()
        .said(new Harvested("K4T", "kabocha", "", count, "storage", HARVEST, grade, null, null));
  }

  private static RipenessNoted tagged(int lowDays, int highDays) {
    return new RipenessNoted("K4T", RipenessSign.TAGGED_SET, lowDays, highDays, 0, HARVEST);
  }

  private static RipenessNoted full(int fruits) {
    return new RipenessNoted("K4T", RipenessSign.SEEDS_FULL, 45, 80, fruits, day(20));
  }

  private static RipenessNoted cut(int fruits) {
    return new RipenessNoted("K4T", RipenessSign.SEEDS_FLAT, 15, 40, fruits, day(20));
  }
}
