package rindward.dashboard.signin;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** How often a guess is looked at, whatever the guesser does. */
class ThrottleTest {
  private static final Instant START = Instant.parse("2026-10-03T09:15:30Z");

  private final Throttle throttle = new Throttle();

  @Test
  void tenThousandAttemptsInTenThousandSecondsGetAFewGuesses() {
    int looked = 0;
    for (int second = 0; second < 10_000; second++) {
      Instant now = START.plusSeconds(second);
      if (throttle.waitFor("wren", now).isZero()) {
        looked++;
        throttle.failed("wren", now);
      }
    }
    // 8 free ones, 10 while the wait doubles up to 15 min, and one in each 15 min after that.
    assertThat(looked).isBetween(25, 29);
  }

  @Test
  void aFewMistakesCostNothing() {
    for (int i = 0; i < Throttle.FREE_FAILURES - 1; i++) {
      assertThat(throttle.failed("wren", START)).isFalse();
      assertThat(throttle.waitFor("wren", START)).isZero();
    }
    assertThat(throttle.failed("wren", START)).as("from here on one waits").isTrue();
    assertThat(throttle.waitFor("wren", START)).isEqualTo(Duration.ofSeconds(1));
    assertThat(throttle.failed("wren", START)).as("said once").isFalse();
  }

  @Test
  void successAndAnHourOfQuietForget() {
    for (int i = 0; i < 30; i++) {
      throttle.failed("wren", START);
      throttle.failed("rook", START);
    }
    assertThat(throttle.waitFor("wren", START)).isEqualTo(Throttle.LONGEST_WAIT);
    throttle.succeeded("wren");
    assertThat(throttle.waitFor("wren", START)).isZero();
    Instant later = START.plus(Duration.ofMinutes(61));
    throttle.failed("rook", later);
    assertThat(throttle.waitFor("rook", later)).isZero();
  }

  @Test
  void namesNobodyHasAskedForLatelyMakeRoomForTheOneUnderAttack() {
    for (int i = 0; i < 50_000; i++) {
      throttle.failed("guess " + i, START);
      if (i % 1_000 == 0) {
        throttle.failed("wren", START);
      }
    }
    assertThat(throttle.waitFor("wren", START)).isPositive();
    assertThat(throttle.waitFor("guess 1", START)).isZero();
  }
}
