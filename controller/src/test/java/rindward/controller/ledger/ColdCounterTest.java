package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Chilling.Dose;
import rindward.controller.crop.Chilling.Harm;
import rindward.controller.crop.Crop;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.Thousandths;

/** What cold does is told by the fruit, which lags the air. */
class ColdCounterTest {
  private static final Crop KABOCHA = CropGuideReader.builtIn().crop("kabocha").orElseThrow();
  private static final Crop SWEET_POTATO =
      CropGuideReader.builtIn().crop("sweet-potato").orElseThrow();
  private static final long HOUR = 3_600_000;

  /**
   * Lumped capacity: after one time constant 1/e of the step is left. 3 kg: radius 93 mm, 900 x
   * 3900 x 0.0927 / (3 x 8) = 13,550 s (worked by hand from the formula).
   */
  @Test
  void fruit_afterOneTimeConstant_hasGoneTheTextbookWay() {
    double lag = FruitLag.millis(3000);
    assertThat(lag).isCloseTo(13_550_000, within(20_000.0));
    ColdCounter counter = new ColdCounter(KABOCHA, Optional.of(3000));
    counter.held(0, HOUR, new int[] {20_000}, new int[] {60_000}, 0, 1);
    int seconds = (int) (lag / 1000);
    int[] cold = new int[seconds];
    counter.held(HOUR, 1000, cold, cold, 0, seconds);

    // 20 x exp(-1) = 7.358 C
    assertThat(counter.cold().coldestFruitMilliC()).isCloseTo(7_358, within(2));
  }

  @Test
  void gapLongerThanTheLag_startsFromTheAirAgain_aShortOneDoesNot() {
    assertThat(afterGap(HOUR)).isGreaterThan(19_000);
    assertThat(afterGap(24 * HOUR)).isEqualTo(7_000);
  }

  private static int afterGap(long gapMillis) {
    ColdCounter counter = new ColdCounter(KABOCHA, Optional.of(3000));
    counter.held(0, HOUR, new int[] {20_000}, new int[] {60_000}, 0, 1);
    counter.unknown(HOUR, gapMillis);
    counter.held(HOUR + gapMillis, 60_000, new int[] {7_000}, new int[] {60_000}, 0, 1);
    return counter.cold().coldestFruitMilliC();
  }

  /** Buttercup 28 days at 5 C: all fruit rotted; at 15 C and above none did (Wright-Grant-1999). */
  @Test
  void buttercup_fourWeeksAtFive_isInjured_atFifteenNot() {
    assertThat(after(KABOCHA, 5_000, Duration.ofDays(28)).isInjured()).isTrue();
    assertThat(after(KABOCHA, 15_000, Duration.ofDays(28)).isInjured()).isFalse();
    assertThat(after(KABOCHA, 15_000, Duration.ofDays(28)).lastBelow()).isNull();
  }

  /** Hard cores after 3 days at 10 C or 1 day at 1.7 C (Mississippi State 2015). */
  @Test
  void sweetPotato_getsHardCores_threeDaysAtTen_oneDayNearFreezing() {
    assertThat(after(SWEET_POTATO, 10_000, Duration.ofDays(3)).isInjured()).isTrue();
    assertThat(after(SWEET_POTATO, 10_000, Duration.ofDays(2)).isInjured()).isFalse();
    assertThat(after(SWEET_POTATO, 1_700, Duration.ofDays(1)).isInjured()).isTrue();
  }

  @Test
  void frozenTime_countsFromTheFreezingPointDown() {
    int freezing = KABOCHA.keeping().freezing().value();
    Duration night = Duration.ofHours(8);

    assertThat(after(KABOCHA, freezing, night).frozenMillis()).isEqualTo(night.toMillis());
    assertThat(after(KABOCHA, freezing - 2_000, night).frozenMillis()).isEqualTo(night.toMillis());
    assertThat(after(KABOCHA, freezing + 1, night).frozenMillis()).isZero();
  }

  @Test
  void timeBelowTheThreshold_isToldForAirAndFruit_untilItsLastMinute() {
    Duration night = Duration.ofHours(8);
    Cold cold = after(KABOCHA, 9_999, night);

    assertThat(cold.airBelowMillis()).isEqualTo(night.toMillis());
    assertThat(cold.fruitBelowMillis()).isEqualTo(night.toMillis());
    assertThat(cold.lastBelow()).isEqualTo(Instant.EPOCH.plus(night));
    assertThat(after(KABOCHA, 10_000, night).airBelowMillis()).isZero();
    assertThat(after(KABOCHA, 10_000, night).fruitBelowMillis()).isZero();
  }

  /** The guide: a week at 9.9 C or below shortens the life, and so do ninety days at 10 C. */
  @Test
  void dosesThatShortenALife_areReachedOnTheirLastDay_andInjuriesAreNotAmongThem() {
    Duration week = Duration.ofDays(7);
    assertThat(after(KABOCHA, 9_900, week).shortening()).extracting(Dose::days).containsExactly(7);
    assertThat(after(KABOCHA, 9_900, week.minusMinutes(1)).shortening()).isEmpty();
    assertThat(after(KABOCHA, 9_901, week).shortening()).isEmpty();
    assertThat(after(KABOCHA, 10_000, Duration.ofDays(90)).shortening())
        .extracting(Dose::days)
        .containsExactly(90);
    assertThat(after(KABOCHA, 6_000, Duration.ofDays(14)).shortening())
        .extracting(Dose::harm)
        .containsExactly(Harm.SHORTENS);
  }

  @Test
  void samplesWithoutATemperature_areAGap() {
    ColdCounter counter = new ColdCounter(KABOCHA, Optional.of(3000));
    int[] air = new int[26];
    Arrays.fill(air, Thousandths.NONE);
    air[0] = 20_000;
    air[25] = 7_000;
    counter.held(0, HOUR, air, air, 0, 26);
    assertThat(counter.cold().coldestFruitMilliC()).isEqualTo(7_000);
  }

  @Test
  void onlyTheSamplesThatWereHandedOver_count_atTheirOwnTime() {
    ColdCounter counter = new ColdCounter(KABOCHA, Optional.empty());
    int[] air = {-9_000, 5_000, 5_000, -9_000};
    counter.held(1_000, HOUR, air, air, 1, 2);
    assertThat(counter.cold().coldestFruitMilliC()).isEqualTo(5_000);
    assertThat(counter.cold().lastBelow()).isEqualTo(Instant.ofEpochMilli(1_000 + 2 * HOUR));
  }

  @Test
  void unmeasuredAir_tellsNothing() {
    Cold cold = new ColdCounter(KABOCHA, Optional.empty()).cold();

    assertThat(cold.coldestFruitMilliC()).isEqualTo(Thousandths.NONE);
    assertThat(cold.isInjured()).isFalse();
  }

  /** Fruit that begins as cold as the air. */
  private static Cold after(Crop crop, int temperatureMilliC, Duration time) {
    ColdCounter counter = new ColdCounter(crop, Optional.empty());
    int minutes = Math.toIntExact(time.toMinutes());
    int[] values = new int[minutes];
    Arrays.fill(values, temperatureMilliC);
    counter.held(0, 60_000, values, values, 0, minutes);
    return counter.cold();
  }
}
