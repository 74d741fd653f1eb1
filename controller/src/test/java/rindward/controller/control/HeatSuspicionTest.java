package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.estimate.OutputState;
import rindward.hardware.Thousandths;

/** A kelvin within ten minutes, above the range, two minutes after the heater was switched off. */
class HeatSuspicionTest {
  private static final long SECOND = 1_000_000_000L;
  private static final long BEGINS = 10_000 * SECOND;
  private static final int UPPER = 16_000;
  private static final OutputState OFF_LONG_AGO = new OutputState(false, 0, 14, 14);

  @Test
  void aKelvinWithinTenMinutes_isSuspected_lessOrLaterIsNot() {
    assertThat(risen(15_100, 16_100, 600 * SECOND)).isTrue();
    assertThat(risen(15_101, 16_100, 600 * SECOND)).isFalse();
    assertThat(risen(15_100, 16_100, 600 * SECOND + 1)).isFalse();
  }

  @Test
  void withinTheRange_nothingIsSuspected() {
    assertThat(risen(14_000, 16_000, 300 * SECOND)).isFalse();
    assertThat(risen(14_000, 16_001, 300 * SECOND)).isTrue();
  }

  @Test
  void theTenMinutesBeginWhenItWasLastThatCold() {
    HeatSuspicion twice = first(15_100).next(OFF_LONG_AGO, 15_100, UPPER, BEGINS + 300 * SECOND);
    assertThat(twice.next(OFF_LONG_AGO, 16_100, UPPER, BEGINS + 800 * SECOND).isSuspected())
        .isTrue();
    HeatSuspicion colder = first(15_100).next(OFF_LONG_AGO, 15_050, UPPER, BEGINS + SECOND);
    assertThat(colder.next(OFF_LONG_AGO, 16_050, UPPER, BEGINS + 2 * SECOND).isSuspected())
        .isTrue();
  }

  @Test
  void whatAHeaterStillGives_isNotSuspectedForTwoMinutes() {
    long now = BEGINS + 300 * SECOND;
    OutputState justNow = new OutputState(false, now - 120 * SECOND + 1, 14, 14);
    OutputState before = new OutputState(false, now - 120 * SECOND, 14, 14);
    assertThat(first(15_000).next(justNow, 17_000, UPPER, now).isSuspected()).isFalse();
    assertThat(first(15_000).next(before, 17_000, UPPER, now).isSuspected()).isTrue();
  }

  @Test
  void aSuspicionEnds_wellWithinTheRangeOrWhenTheHeaterIsAskedFor() {
    long now = BEGINS + 300 * SECOND;
    HeatSuspicion suspected = first(15_000).next(OFF_LONG_AGO, 17_000, UPPER, now);
    assertThat(suspected.next(OFF_LONG_AGO, 15_500, UPPER, now + SECOND).isSuspected()).isTrue();
    assertThat(suspected.next(OFF_LONG_AGO, 15_499, UPPER, now + SECOND))
        .isEqualTo(HeatSuspicion.NONE);
    assertThat(suspected.next(new OutputState(true, now, 14, 14), 17_000, UPPER, now + SECOND))
        .isEqualTo(HeatSuspicion.NONE);
    assertThat(suspected.next(OFF_LONG_AGO, Thousandths.NONE, UPPER, now + SECOND))
        .isEqualTo(suspected);
  }

  private static HeatSuspicion first(int milliC) {
    return HeatSuspicion.NONE.next(OFF_LONG_AGO, milliC, UPPER, BEGINS);
  }

  private static boolean risen(int fromMilliC, int toMilliC, long nanos) {
    return first(fromMilliC).next(OFF_LONG_AGO, toMilliC, UPPER, BEGINS + nanos).isSuspected();
  }
}
