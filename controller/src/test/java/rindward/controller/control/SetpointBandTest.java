package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Stock;
import rindward.hardware.air.SaturationPressure;

/** Where a store of 12-16 C and 50-70 % is kept; worked by hand from what is written there. */
class SetpointBandTest {
  private static final Range KEEP =
      new Range(new Limits(12_000, 16_000), new Limits(50_000, 70_000));
  private static final double UNKNOWN = Double.NaN;

  @Test
  void startsAboveTheLimit_andIsWiderThanOneSwing() {
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 2_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 12_300, 14_900, 16_000, false, false));
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 500, UNKNOWN))
        .as("a kelvin at least")
        .isEqualTo(new SetpointBand(12_000, 12_300, 13_300, 16_000, false, false));
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 9_000, UNKNOWN))
        .as("three and a half at most")
        .isEqualTo(new SetpointBand(12_000, 12_300, 15_800, 16_000, false, false));
  }

  @Test
  void whatTheProbeMayBeWrongBy_isKeptClearOfBothLimits() {
    assertThat(band(new Accuracy(200, 0), Stock.UNTOLD, 2_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 12_500, 15_100, 15_800, false, false));
    assertThat(band(new Accuracy(200, 0), Stock.UNTOLD, 9_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 12_500, 15_800, 15_800, false, false));
  }

  @Test
  void noWiderThanTheHumidityRangeLets() {
    assertThat(band(new Accuracy(0, 3_000), Stock.UNTOLD, 9_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 12_300, 15_100, 16_000, false, false));
  }

  @Test
  void aChillingThresholdNearby_isTheFloorAndNeverHugged() {
    assertThat(band(Accuracy.EXACT, new Stock(11_499, null), 2_000, UNKNOWN).start())
        .isEqualTo(12_300);
    assertThat(band(Accuracy.EXACT, new Stock(11_500, null), 2_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 12_500, 15_100, 16_000, false, false));
    assertThat(band(Accuracy.EXACT, new Stock(13_000, null), 2_000, UNKNOWN))
        .isEqualTo(new SetpointBand(13_000, 13_500, 16_000, 16_000, false, false));
  }

  @Test
  void aRangeNarrowerThanTheRoomCanHold_isKeptAboutItsMiddle() {
    assertThat(band(new Accuracy(2_000, 0), Stock.UNTOLD, 2_000, UNKNOWN))
        .isEqualTo(new SetpointBand(12_000, 13_500, 14_500, 14_000, true, false));
  }

  @Test
  void dampAir_raisesTheBandToWhereItHoldsSixtySevenPercent_butNotToTheLimit() {
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 2_000, vapour(67, 13.5)))
        .isEqualTo(new SetpointBand(12_000, 13_500, 16_100, 16_000, false, true));
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 2_000, vapour(67, 15)))
        .isEqualTo(new SetpointBand(12_000, 13_700, 16_300, 16_000, false, true));
    assertThat(band(Accuracy.EXACT, Stock.UNTOLD, 2_000, vapour(67, 12.2)).isRaised()).isFalse();
  }

  @Test
  void aHeaterInTicks_aimsAboveTheDipsBetweenThem() {
    SetpointBand band = band(Accuracy.EXACT, Stock.UNTOLD, 2_000, UNKNOWN);
    assertThat(band.aimC(2)).isCloseTo(12.46, within(1e-9));
  }

  private static SetpointBand band(Accuracy accuracy, Stock stock, int swing, double vapourPa) {
    return SetpointBand.of(KEEP, accuracy, stock, swing, vapourPa);
  }

  private static double vapour(double pct, double temperatureC) {
    return pct / 100 * SaturationPressure.overIceOrWaterPa(temperatureC);
  }
}
