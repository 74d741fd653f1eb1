package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Cure;
import rindward.controller.crop.RateCurve;
import rindward.controller.settings.CropGuideReader;
import rindward.hardware.Thousandths;

/**
 * What an hour of air earns of a cure, to the last unit. Butternut's rate is zero at 15 C, 1/14 a
 * day at 21 C, 1/10 from 27 to 30 C and zero from 35 C on; above 85 % nothing is earned.
 */
class CureCounterTest {
  private static final Cure CURE =
      CropGuideReader.builtIn().crop("butternut").orElseThrow().cure().orElseThrow();
  private static final Accuracy ROUGH = new Accuracy(500, 3_000);
  private static final long HOUR = 3_600_000;
  private static final long WHOLE_RATE = CURE.rate().femtoPerMilli(28_000);

  @Test
  void humidityThatMayBeADamperOne_isNotCertain() {
    assertThat(earned(28_000, 82_000)).isEqualTo(hours(1, 1, 1));
    assertThat(earned(28_000, 82_001)).isEqualTo(hours(0, 1, 1));
    assertThat(earned(28_000, 85_000)).isEqualTo(hours(0, 1, 1));
    assertThat(earned(28_000, 85_001)).isEqualTo(hours(0, 0, 1));
    assertThat(earned(28_000, 88_000)).isEqualTo(hours(0, 0, 1));
    assertThat(earned(28_000, 88_001)).isEqualTo(hours(0, 0, 0));
  }

  /** Sweet potato's cure slows in dry air. */
  @Test
  void humidityThatMayBeADrierOne_isNotCertain() {
    Cure cure = CropGuideReader.builtIn().crop("sweet-potato").orElseThrow().cure().orElseThrow();
    int limit = cure.humidityEffect().dry().orElseThrow().limit().value();
    int warm = cure.temperature().value().middle();
    for (int humidity : new int[] {limit + 1_000, limit - 1_000}) {
      CureCounter counter = new CureCounter(cure, new Accuracy(0, 3_000), BoundedTotal.ZERO);
      counter.held(0, HOUR, new int[] {warm}, new int[] {humidity}, 0, 1);
      assertThat(counter.progress())
          .isEqualTo(
              new BoundedTotal(
                  HOUR * cure.femtoPerMilli(warm, humidity - 3_000),
                  HOUR * cure.femtoPerMilli(warm, humidity),
                  HOUR * cure.femtoPerMilli(warm, limit)));
      assertThat(counter.progress().certain()).isLessThan(counter.progress().possible());
    }
  }

  @Test
  void humidityNobodyMeasured_earnsWhatTheWorstWouldHave() {
    assertThat(earned(28_000, Thousandths.NONE)).isEqualTo(hours(0, 0, 0));
    Cure dryOnly = CropGuideReader.builtIn().crop("onion").orElseThrow().cure().orElseThrow();
    BoundedTotal onion = earned(dryOnly, 28_000, Thousandths.NONE);
    long least = dryOnly.femtoPerMilli(28_000, 100_000) * HOUR;
    assertThat(onion.measured()).isEqualTo(least);
  }

  @Test
  void temperatureThatMayBeAnother_isCertainForTheWorseAndPossibleForTheBetter() {
    assertThat(earned(24_000, 60_000))
        .isEqualTo(
            new BoundedTotal(
                HOUR * CURE.rate().femtoPerMilli(23_500),
                HOUR * CURE.rate().femtoPerMilli(24_000),
                HOUR * CURE.rate().femtoPerMilli(24_500)));
  }

  @Test
  void beyondTheCurve_earnsNothing_butMayHaveWithinTheProbesDoubt() {
    long atHalfAKelvin = HOUR * CURE.rate().femtoPerMilli(15_100);
    assertThat(earned(14_600, 60_000)).isEqualTo(new BoundedTotal(0, 0, atHalfAKelvin));
    assertThat(earned(14_499, 60_000)).isEqualTo(BoundedTotal.ZERO);
    assertThat(earned(35_400, 60_000))
        .isEqualTo(new BoundedTotal(0, 0, HOUR * CURE.rate().femtoPerMilli(34_900)));
    assertThat(earned(35_501, 60_000)).isEqualTo(BoundedTotal.ZERO);
  }

  @Test
  void aWholeCure_endsAtItsMillisecond_andNothingMoreIsEarned() {
    long missing = 10 * WHOLE_RATE - 1;
    long before = RateCurve.WHOLE - missing;
    CureCounter counter =
        new CureCounter(CURE, Accuracy.EXACT, new BoundedTotal(before, before, before));
    int[] air = {28_000, 28_000};
    counter.held(1_000, HOUR, air, new int[] {60_000, 60_000}, 0, 2);

    assertThat(counter.doneAtMillis()).hasValue(1_010);
    assertThat(counter.progress().measured()).isEqualTo(before + 10 * WHOLE_RATE);
  }

  @Test
  void aWholeCureInALaterSample_endsInThatSample() {
    long before = RateCurve.WHOLE - WHOLE_RATE * HOUR - WHOLE_RATE;
    CureCounter counter =
        new CureCounter(CURE, Accuracy.EXACT, new BoundedTotal(before, before, before));
    int[] air = {0, 28_000, 28_000};
    counter.held(1_000, HOUR, air, new int[] {60_000, 60_000, 60_000}, 1, 2);

    assertThat(counter.doneAtMillis()).hasValue(1_000 + HOUR + 1);
  }

  @Test
  void timeNotMeasured_earnsNothing() {
    CureCounter counter = new CureCounter(CURE, ROUGH, new BoundedTotal(1, 2, 3));
    counter.unknown(0, HOUR);
    assertThat(counter.progress()).isEqualTo(new BoundedTotal(1, 2, 3));
    assertThat(counter.doneAtMillis()).isEmpty();
  }

  private static BoundedTotal earned(int temperatureMilliC, int humidityMilliPct) {
    return earned(CURE, temperatureMilliC, humidityMilliPct);
  }

  private static BoundedTotal earned(Cure cure, int temperatureMilliC, int humidityMilliPct) {
    CureCounter counter = new CureCounter(cure, ROUGH, BoundedTotal.ZERO);
    counter.held(0, HOUR, new int[] {temperatureMilliC}, new int[] {humidityMilliPct}, 0, 1);
    return counter.progress();
  }

  private static BoundedTotal hours(int certain, int measured, int possible) {
    long hour = HOUR * WHOLE_RATE;
    return new BoundedTotal(certain * hour, measured * hour, possible * hour);
  }
}
