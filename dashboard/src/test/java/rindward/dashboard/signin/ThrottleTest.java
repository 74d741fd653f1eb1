package rindward.dashboard.signin;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.dashboard.signin.Throttle.Attempt;
import rindward.dashboard.signin.Throttle.Key;

/** How often a guess is looked at, whatever the guesser does. */
class ThrottleTest {
  private static final Instant START = Instant.parse("2026-10-03T09:15:30Z");

  private final Throttle throttle = new Throttle();

  @Test
  void tenThousandAttemptsInTenThousandSecondsGetAFewGuesses() {
    int looked = 0;
    for (int second = 0; second < 10_000; second++) {
      looked += attempt("wren", START.plusSeconds(second)).pause().isZero() ? 1 : 0;
    }
    // 8 free ones, 10 while the wait doubles up to 15 min, and one in each 15 min after that.
    assertThat(looked).isBetween(25, 29);
  }

  @Test
  void aFewMistakesCostNothing() {
    for (int i = 0; i < Throttle.FREE_FAILURES - 1; i++) {
      assertThat(attempt("wren", START)).isEqualTo(new Attempt(Duration.ZERO, false));
    }
    assertThat(attempt("wren", START)).isEqualTo(new Attempt(Duration.ZERO, true));
    assertThat(attempt("wren", START)).isEqualTo(new Attempt(Duration.ofSeconds(1), false));
  }

  @Test
  void successAndAnHourOfQuietForget() {
    Instant now = waitLongest("wren");
    throttle.succeeded(List.of(key("wren")));
    assertThat(attempt("wren", now).pause()).isZero();
    Instant later = waitLongest("rook").plus(Duration.ofMinutes(61));
    attempt("rook", later);
    assertThat(attempt("rook", later).pause()).isZero();
  }

  @Test
  void anotherPasswordForgivesWhoTriedThatNameLast_andNobodyElse() {
    for (int i = 0; i < 9; i++) {
      throttle.attempt(List.of(new Key("address 1", "wren", "old")), START);
    }
    assertThat(throttle.attempt(List.of(new Key("address 1", "rook", "x")), START).pause())
        .isPositive();
    assertThat(throttle.attempt(List.of(new Key("address 1", "wren", "old")), START).pause())
        .isPositive();
    assertThat(throttle.attempt(List.of(new Key("address 1", "wren", "new")), START).pause())
        .isZero();
  }

  @Test
  void namesNobodyHasAskedForLatelyMakeRoomForTheOneUnderAttack() {
    for (int i = 0; i < 50_000; i++) {
      attempt("guess " + i, START);
      if (i % 1_000 == 0) {
        attempt("wren", START);
      }
    }
    assertThat(attempt("wren", START).pause()).isPositive();
    assertThat(attempt("guess 1", START).pause()).isZero();
  }

  private Instant waitLongest(String name) {
    Instant now = START;
    for (int i = 0; i < 60; i++) {
      now = now.plus(attempt(name, now).pause());
    }
    assertThat(attempt(name, now).pause()).isEqualTo(Throttle.LONGEST_WAIT);
    return now;
  }

  private Attempt attempt(String name, Instant now) {
    return throttle.attempt(List.of(key(name)), now);
  }

  private static Key key(String name) {
    return new Key(name, name, "");
  }
}
