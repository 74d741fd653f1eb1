package rindward.controller.readiness;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.controller.readiness.Trial.GUIDE;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;

/** What a place will do to a crop, at the very limits of the guide. */
class PlaceFitTest {
  @Test
  void colderThanHarms_isTold_atTheThresholdItFits() {
    assertThat(misfit("butternut", 9_900, 60_000))
        .contains("Butternut squash: 9.9 C is too cold: it is harmed below 10 C.");
    assertThat(misfit("butternut", 10_000, 60_000)).isEmpty();
  }

  @Test
  void cropThatMindsNoCold_isTooColdBelowItsFreezingPoint() {
    int freezing = GUIDE.crop("onion").orElseThrow().keeping().freezing().value();
    assertThat(misfit("onion", freezing - 100, 67_000).orElseThrow()).contains("is too cold");
    assertThat(misfit("onion", freezing, 67_000)).isEmpty();
  }

  @Test
  void damperThanRotNeeds_isWarnedOf_atTheLimitItIsOnlyDamp() {
    assertThat(misfit("butternut", 12_000, 85_001))
        .contains("Butternut squash: At 85 % rot threatens.");
    assertThat(misfit("butternut", 12_000, 85_000))
        .contains("Butternut squash: At 85 % it is damper than best (50 to 70 %).");
    assertThat(misfit("butternut", 12_000, 70_000)).isEmpty();
    assertThat(misfit("butternut", 12_000, 50_000)).isEmpty();
    assertThat(misfit("butternut", 12_000, 49_000))
        .contains("Butternut squash: At 49 % it dries out and loses weight (best 50 to 70 %).");
  }

  @Test
  void coldAndDamp_isToldInBothSentences() {
    assertThat(misfit("butternut", 5_000, 90_000))
        .contains(
            "Butternut squash: 5 C is too cold: it is harmed below 10 C. At 90 % rot threatens.");
  }

  @Test
  void warmerThanBest_isALittleWarmUpToItsLimit_andTooWarmAbove() {
    assertThat(misfit("butternut", 13_000, 60_000)).isEmpty();
    assertThat(misfit("butternut", 15_000, 60_000).orElseThrow()).contains("15 C is a little warm");
    assertThat(misfit("butternut", 15_100, 60_000).orElseThrow()).contains("15.1 C is too warm");
  }

  @Test
  void aLotThatCures_fitsAnyPlaceThatSharesADegreeWithItsCure() {
    assertThat(curing("butternut", 24_000, 27_000)).isEmpty();
    assertThat(curing("butternut", 29_000, 33_000)).isEmpty();
    assertThat(curing("butternut", 24_000, 26_999).orElseThrow()).contains("too warm");
    assertThat(curing("butternut", 29_001, 33_000).orElseThrow()).contains("too warm");
    assertThat(curing("acorn", 27_000, 29_000).orElseThrow()).contains("too warm");
  }

  @Test
  void whatBothAgreeOn_isToldAsTooNarrowBelowAKelvinAndAHalf() {
    // Butternut keeps best at 10 to 13 C.
    assertThat(narrow(11_501, 16_000, 300)).isPresent();
    assertThat(narrow(11_500, 16_000, 300)).isEmpty();
    assertThat(narrow(8_000, 11_499, 300)).isPresent();
    assertThat(narrow(8_000, 11_500, 300)).isEmpty();
    assertThat(narrow(10_000, 12_000, 1_000)).isEmpty();
    assertThat(narrow(10_000, 12_000, 1_001)).isPresent();
    assertThat(narrow(13_000, 16_000, 300).orElseThrow()).contains("13 to 13 C");
    assertThat(narrow(13_001, 16_000, 300)).as("a misfit, told as one").isEmpty();
  }

  private static Optional<String> misfit(String crop, int milliC, int milliPct) {
    return PlaceFit.misfit(
        GUIDE.crop(crop).orElseThrow(),
        new Range(new Limits(milliC, milliC), new Limits(milliPct, milliPct)),
        false);
  }

  private static Optional<String> curing(String crop, int low, int high) {
    return PlaceFit.misfit(
        GUIDE.crop(crop).orElseThrow(),
        new Range(new Limits(low, high), new Limits(50_000, 70_000)),
        true);
  }

  private static Optional<String> narrow(int low, int high, int accuracyMilliC) {
    return PlaceFit.tooNarrow(
        GUIDE.crop("butternut").orElseThrow(),
        new Range(new Limits(low, high), new Limits(50_000, 70_000)),
        accuracyMilliC);
  }
}
