package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A humidifier that works, one that only just holds, and one whose tank is empty. */
class NoEffectDetectorTest {
  private static final int HOUR_MINUTES = 60;

  private final NoEffectDetector check = new NoEffectDetector(0.5, true, 3600);
  private long now;
  private double pct = 50;

  private void pass(int minutes, double change, boolean isRunning) {
    for (int i = 0; i < minutes; i++) {
      now += 60;
      pct += change / minutes;
      check.tick(now, pct, isRunning);
    }
  }

  @Test
  void anHourWithoutAnyChange_isWithoutEffect_untilItMovesSomething() {
    pass(HOUR_MINUTES, 0, true);
    assertThat(check.isWithout()).isFalse();
    pass(2, 0, true);
    assertThat(check.isWithout()).isTrue();
    pass(10, 1, true);
    assertThat(check.isWithout()).isFalse();
  }

  @Test
  void holdingWhatItHasReached_isAnEffect() {
    pass(20, 3, true);
    pass(5 * HOUR_MINUTES, 0, true);
    assertThat(check.isWithout()).isFalse();
  }

  @Test
  void losingWhatItHadReached_isNone() {
    pass(20, 3, true);
    pass(3 * HOUR_MINUTES, -3, true);
    assertThat(check.isWithout()).isTrue();
  }

  @Test
  void shortRuns_areNotJudged() {
    for (int i = 0; i < 10; i++) {
      pass(50, 0, true);
      pass(10, 0, false);
    }
    assertThat(check.isWithout()).isFalse();
  }
}
