package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;

class DayNotesTest {
  private static final Reason WARM = new Reason(ReasonCode.CANNOT_COOL, 20_000, 24_000);
  private static final Reason DRY = new Reason(ReasonCode.CANNOT_MOISTEN, 40_000, 50_000);

  private final DayNotes notes = new DayNotes();

  @Test
  void whatHasLastedAnHour_isNotedOnceADay() {
    int noted = 0;
    for (int minute = 0; minute < 3 * 24 * 60; minute++) {
      noted += notes.isDue("store", WARM, nanos(minute)) ? 1 : 0;
    }
    assertThat(noted).isEqualTo(3);
  }

  @Test
  void whatPassesOrChangesWithinTheHour_isNotNoted() {
    for (int minute = 0; minute < 24 * 60; minute++) {
      Reason said = minute % 50 == 0 ? null : minute / 50 % 2 == 0 ? WARM : DRY;
      assertThat(notes.isDue("store", said, nanos(minute))).isFalse();
    }
  }

  private static long nanos(int minute) {
    return Duration.ofMinutes(minute).toNanos();
  }
}
