package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.HARVEST;
import static rindward.controller.readiness.Trial.day;

import org.junit.jupiter.api.Test;
import rindward.controller.journal.Cause;
import rindward.controller.journal.Culled;
import rindward.controller.journal.Harvested;
import rindward.controller.journal.Moved;
import rindward.controller.readiness.Verdict.Expected;

/**
 * When what is expected of a lot is told to come, to the day; windows and lives are the guide's.
 */
class ExpectedDatesTest {
  @Test
  void rest_endsInTheWindowThatBeginsSoManyDaysAfterHarvest() {
    assertThat(expected("butternut", 15)).isEqualTo(new Expected("at its best", day(20), day(30)));
    assertThat(kept("butternut").verdict("K4T", 19).state()).isEqualTo(State.RESTING);
    assertThat(kept("butternut").verdict("K4T", 20).state()).isEqualTo(State.READY);
  }

  @Test
  void aWindow_isPastWhenTheLastThatMayHoldEnds() {
    assertThat(expected("kabocha", 15)).isEqualTo(new Expected("past that", day(20), day(60)));
    assertThat(expected("kabocha", 20)).isEqualTo(new Expected("past that", day(60), day(90)));
    assertThat(expected("kabocha", 89)).isEqualTo(new Expected("past that", day(89), day(90)));
  }

  /** Cured on day 10, a day at 28 C (2.93 of life with a Q10 of 2), then one a day at 12.5 C. */
  @Test
  void aLife_isOverWhenItsDaysAreSpent() {
    assertThat(expected("kabocha", 150))
        .isEqualTo(new Expected("no longer good", day(150), day(150 + 180 - 141)));
  }

  @Test
  void aFailingLot_isEatenWithinWeeks() {
    Trial trial = kept("kabocha").said(new Culled("K4T", 5, Cause.ROT, "", day(40)));
    assertThat(trial.verdict("K4T", 45).expected())
        .contains(new Expected("no longer good", day(59), day(73)));
  }

  @Test
  void aNightThatTheFruitDidNotFollow_isNotedAndHarmsNothing() {
    Trial trial =
        new Trial()
            .place(
                "storage",
                minute -> minute / 1440 == 5 && minute % 1440 < 30 ? 8_000 : 13_000,
                minute -> 60_000)
            .said(new Harvested("K4T", "acorn", "", 20, "storage", HARVEST));
    assertThat(trial.verdict("K4T", 5).reasons()).noneMatch(s -> s.contains("too cold"));
    assertThat(trial.verdict("K4T", 7).state()).isEqualTo(State.READY);
    assertThat(trial.verdict("K4T", 7).reasons())
        .anyMatch(s -> s.startsWith("The air was too cold for") && s.contains("not long enough"));
  }

  private static Expected expected(String crop, int day) {
    return kept(crop).verdict("K4T", day).expected().orElseThrow();
  }

  private static Trial kept(String crop) {
    return new Trial()
        .place("curing", 28_000, 76_000)
        .place("storage", 12_500, 60_000)
        .said(new Harvested("K4T", crop, "", 20, "curing", HARVEST))
        .said(new Moved("K4T", "storage", day(11)));
  }
}
