package rindward.controller.store.copies;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A copy every night of a year, and what stays of them. */
class RotationTest {
  private static final ZoneId ZONE = ZoneId.of("America/Chicago");

  @Test
  void kept_afterAYearOfNights_isSevenDaysAndFourSundays() {
    Set<Instant> made = new HashSet<>();
    LocalDate last = LocalDate.of(2026, 11, 25);
    for (LocalDate day = last.minusYears(1); !day.isAfter(last); day = day.plusDays(1)) {
      made.add(night(day));
      made = new HashSet<>(Rotation.kept(made, ZONE));
    }

    TreeSet<LocalDate> days = new TreeSet<>();
    made.forEach(at -> days.add(at.atZone(ZONE).toLocalDate()));

    assertThat(days).hasSize(11);
    assertThat(days.tailSet(last.minusDays(6))).hasSize(7);
    // The newest of what is left of the week before last is its latest day outside the seven.
    assertThat(days.headSet(last.minusDays(6)))
        .containsExactly(
            LocalDate.of(2026, 11, 1),
            LocalDate.of(2026, 11, 8),
            LocalDate.of(2026, 11, 15),
            LocalDate.of(2026, 11, 18));
    assertThat(days.first().getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
  }

  @Test
  void kept_severalOfOneDay_isTheNewest() {
    Instant morning = night(LocalDate.of(2026, 11, 25));
    Instant noon = morning.plus(Duration.ofHours(9));

    assertThat(Rotation.kept(List.of(noon, morning), ZONE)).containsExactly(noon);
  }

  @Test
  void isDue_onceAfterEachNightBegan() {
    Instant night = night(LocalDate.of(2026, 11, 25));
    Instant yesterday = night.minus(Duration.ofHours(20));

    assertThat(Rotation.isDue(List.of(), night, ZONE)).isTrue();
    assertThat(Rotation.isDue(List.of(yesterday), night.minusSeconds(1), ZONE)).isFalse();
    assertThat(Rotation.isDue(List.of(yesterday), night, ZONE)).isTrue();
    assertThat(Rotation.isDue(List.of(yesterday, night), night.plusSeconds(1), ZONE)).isFalse();
  }

  @Test
  void isDue_copyOfAClockThatRanAhead_doesNotPutOffTheNext() {
    Instant night = night(LocalDate.of(2026, 11, 25));

    assertThat(Rotation.isDue(List.of(night.plus(Duration.ofDays(900))), night, ZONE)).isTrue();
  }

  private static Instant night(LocalDate day) {
    return day.atTime(3, 0).atZone(ZONE).toInstant();
  }
}
