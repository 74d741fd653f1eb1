package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;
import rindward.controller.estimate.AirEstimate;
import rindward.hardware.air.SaturationPressure;

/** How much water steady air of 14 C should hold; worked by hand from the shares. */
class VapourPressureBandTest {
  private static final double SATURATED_PA = SaturationPressure.overIceOrWaterPa(14);

  private static final AirEstimate STEADY =
      new AirEstimate(0, 14, 14, 0, 14, 14, 14, 14, 0.6 * SATURATED_PA, null);

  @Test
  void wideRange_isHumidifiedFromFifteenToFortyFivePercentOfIt() {
    holds(new Limits(50_000, 70_000), 0.53, 0.59, 0.70);
  }

  @Test
  void rangeThatIsNearlyNone_isWorkedAboutItsMiddle() {
    holds(new Limits(60_000, 61_000), 0.605 * 0.995, 0.605 * 1.015, 0.605 * 1.015 * 1.04);
  }

  @Test
  void neverDriedBelowWhatWasHumidifiedTo() {
    // 60 to 66 %: up to 62.7 %, and 4 % more of it are 65.2 %, within the range.
    holds(new Limits(60_000, 66_000), 0.609, 0.627, 0.66);
    // 60 to 64.1 %: up to 61.845 %, and 4 % more of it are 64.32 %, just beyond.
    holds(new Limits(60_000, 64_100), 0.60615, 0.61845, 0.61845 * 1.04);
  }

  private static void holds(Limits sure, double start, double stop, double damp) {
    VapourPressureBand band = VapourPressureBand.of(sure, STEADY);
    assertThat(band.startPa()).isCloseTo(start * SATURATED_PA, within(1e-6));
    assertThat(band.stopPa()).isCloseTo(stop * SATURATED_PA, within(1e-6));
    assertThat(band.dampPa()).isCloseTo(damp * SATURATED_PA, within(1e-6));
  }
}
