package rindward.controller.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** An exhaust that moves air shows it in the cold; one that does not, three times. */
class DeadExhaustDetectorTest {
  private final DeadExhaustDetector exhaust = new DeadExhaustDetector();
  private long now;

  private void vent(double dipK, double outdoorC) {
    for (int tick = 0; tick < 30; tick++) {
      now += 10;
      exhaust.tick(now, 12 - dipK * tick / 30, outdoorC, true, false);
    }
    now += 10;
    exhaust.tick(now, 12, outdoorC, false, false);
  }

  @Test
  void threeRunsWithoutADip_areADeadExhaust_andOneWithADipEndsIt() {
    vent(0, 0);
    vent(0, 0);
    assertThat(exhaust.isDead()).isFalse();
    vent(0, 0);
    assertThat(exhaust.isDead()).isTrue();
    vent(0.8, 0);
    assertThat(exhaust.isDead()).isFalse();
  }

  @Test
  void outsideNotMuchColder_nothingCanBeTold() {
    for (int i = 0; i < 10; i++) {
      vent(0, 8);
    }
    assertThat(exhaust.isDead()).isFalse();
  }

  @Test
  void longRunInANightThatGrowsCold_isNotJudged_forItsDipIsOver() {
    for (int tick = 0; tick < 1000; tick++) {
      now += 10;
      exhaust.tick(now, 12, tick % 50 < 25 ? 6.1 : 5.9, true, false);
    }
    assertThat(exhaust.isDead()).isFalse();
  }
}
