package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Keeping;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.Thousandths;

/** Kabocha ages once at 12.5 C and twice as fast ten degrees warmer (a Q10 of 2, the guide's). */
class AgeCounterTest {
  private static final Keeping KABOCHA =
      CropGuideReader.builtIn().crop("kabocha").orElseThrow().keeping();
  private static final long HOUR = 3_600_000;

  private final AgeCounter counter = new AgeCounter(KABOCHA);

  @Test
  void anHourAtTheReference_isAnHourOfLife_tenDegreesWarmerTwo() {
    held(12_500);
    assertThat(counter.spentMillis()).isEqualTo(HOUR);
    held(22_500);
    assertThat(counter.spentMillis()).isEqualTo(3 * HOUR);
    assertThat(counter.unknownMillis()).isZero();
  }

  @Test
  void timeNotMeasured_countsAsStoredWell_andIsToldApart() {
    held(Thousandths.NONE);
    counter.unknown(HOUR, HOUR);
    assertThat(counter.spentMillis()).isEqualTo(2 * HOUR);
    assertThat(counter.unknownMillis()).isEqualTo(2 * HOUR);
  }

  @Test
  void onlyTheSamplesThatWereHandedOver_count_eachAtItsOwnTemperature() {
    int[] air = {22_500, 12_500, 22_500, 22_740, 22_500};
    counter.held(0, HOUR, air, air, 1, 2);
    assertThat(counter.spentMillis()).isEqualTo(3 * HOUR);
    // 10.24 degrees apart share a place in what is remembered.
    held(22_500 - 10_240);
    held(22_500);
    assertThat(counter.spentMillis()).isEqualTo(5 * HOUR + HOUR * KABOCHA.agingRate(12_260) / 1000);
  }

  private void held(int temperatureMilliC) {
    counter.held(0, HOUR, new int[] {temperatureMilliC}, new int[] {60_000}, 0, 1);
  }
}
