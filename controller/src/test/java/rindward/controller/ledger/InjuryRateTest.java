package rindward.controller.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Chilling;
import rindward.controller.crop.RateCurve;
import rindward.controller.settings.CropGuideReader;

/**
 * Sweet potato injures in three days at 10 C and in one at 1.7 C, nothing at its threshold
 * (Mississippi State 2015, as the guide has it); straight lines lie between and go on below.
 */
class InjuryRateTest {
  private static final Chilling CHILLING =
      CropGuideReader.builtIn()
          .crop("sweet-potato")
          .orElseThrow()
          .keeping()
          .chilling()
          .orElseThrow();
  private static final InjuryRate RATE = new InjuryRate(CHILLING);
  private static final long A_DAY = RateCurve.WHOLE / 86_400_000;
  private static final int THRESHOLD = CHILLING.threshold().value();

  @Test
  void atTheThreshold_nothing_atEachDoseItsDays() {
    assertThat(RATE.femtoPerMilli(THRESHOLD)).isZero();
    assertThat(RATE.femtoPerMilli(10_000)).isEqualTo(RateCurve.WHOLE / (3L * 86_400_000));
    assertThat(RATE.femtoPerMilli(1_700)).isEqualTo(A_DAY);
  }

  @Test
  void betweenTwoDoses_halfWayIsHalfWay() {
    long atTen = RATE.femtoPerMilli(10_000);
    assertThat(RATE.femtoPerMilli(5_850)).isEqualTo(atTen + (A_DAY - atTen) / 2);
    assertThat(RATE.femtoPerMilli((THRESHOLD + 10_000) / 2)).isEqualTo(atTen / 2);
  }

  @Test
  void belowTheColdestDose_theLineFromTheThresholdGoesOn() {
    int twiceAsFar = 2 * 1_700 - THRESHOLD;
    assertThat(RATE.femtoPerMilli(twiceAsFar)).isEqualTo(2 * A_DAY);
  }

  /** Kabocha: two weeks at 6 C injure; what only shortens its life is no injury. */
  @Test
  void dosesThatShortenALife_injureNothing() {
    Chilling kabocha =
        CropGuideReader.builtIn().crop("kabocha").orElseThrow().keeping().chilling().orElseThrow();
    long atSix = RateCurve.WHOLE / (14L * 86_400_000);
    assertThat(new InjuryRate(kabocha).femtoPerMilli(6_000)).isEqualTo(atSix);
    assertThat(new InjuryRate(kabocha).femtoPerMilli(8_000)).isEqualTo(atSix / 2);
  }

  @Test
  void halfADayShortOfTheLongestDose_isEnough() {
    assertThat(RATE.enough()).isEqualTo(RateCurve.WHOLE - RateCurve.WHOLE / 6);
  }
}
