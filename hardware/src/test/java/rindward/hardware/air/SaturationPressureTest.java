package rindward.hardware.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rindward.hardware.Any;
import rindward.hardware.Seeded;

class SaturationPressureTest {
  // The handbook states that its equations agree with its table within 300 ppm.
  private static final double HANDBOOK_PCT = 0.03;

  @ParameterizedTest
  @CsvFileSource(resources = "saturation-pressure.csv", numLinesToSkip = 2)
  void agreesWithTheEquationsAndThePrintedTable(
      double temperatureC, double pressurePa, Double printedPa) {
    double actual = SaturationPressure.overIceOrWaterPa(temperatureC);

    assertThat(actual).isCloseTo(pressurePa, within(0.00005));
    if (printedPa != null) {
      assertThat(actual).isCloseTo(printedPa, withinPercentage(HANDBOOK_PCT));
    }
  }

  // IAPWS R14-08 (2011): the triple point of water is 611.657 Pa.
  @Test
  void triplePoint_isThatOfWater_fromBothSides() {
    assertThat(SaturationPressure.overIceOrWaterPa(0.01)).isCloseTo(611.657, within(0.0005));
    assertThat(SaturationPressure.overIceOrWaterPa(0.010001)).isCloseTo(611.657, within(0.0005));
  }

  @Seeded
  void dewPoint_ofASaturatedState_isItsTemperature(Any any) {
    double temperatureC = any.doubleBetween(-100, 200);
    double pressurePa = SaturationPressure.overIceOrWaterPa(temperatureC);
    assertThat(SaturationPressure.temperatureC(pressurePa)).isCloseTo(temperatureC, within(1e-6));
  }

  @Seeded
  void pressure_risesWithTemperature(Any any) {
    double temperatureC = any.doubleBetween(-100, 199);
    double rise = any.doubleBetween(0.01, 1);
    assertThat(SaturationPressure.overIceOrWaterPa(temperatureC + rise))
        .isGreaterThan(SaturationPressure.overIceOrWaterPa(temperatureC));
  }

  @Seeded
  void logSlope_isTheSlopeOfThePressure(Any any) {
    double temperatureC = any.doubleBetween(-60, 100);
    double h = 1e-3;
    if (Math.abs(temperatureC - SaturationPressure.TRIPLE_POINT_C) < h) {
      return; // the slope jumps where ice becomes water
    }
    double slope =
        Math.log(
                SaturationPressure.overIceOrWaterPa(temperatureC + h)
                    / SaturationPressure.overIceOrWaterPa(temperatureC - h))
            / (2 * h);
    assertThat(SaturationPressure.logSlope(temperatureC)).isCloseTo(slope, within(1e-7));
  }

  @Test
  void noVapour_hasNoDewPoint() {
    assertThat(SaturationPressure.temperatureC(0)).isNaN();
    assertThat(SaturationPressure.temperatureC(1e-9)).isNaN();
  }

  @Test
  void outsideTheEquations_isRefused() {
    assertThatThrownBy(() -> SaturationPressure.overIceOrWaterPa(-100.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("temperature was -100.5 but it must lie in -100..200 C");
    assertThatThrownBy(() -> SaturationPressure.overIceOrWaterPa(Double.NaN))
        .hasMessage("temperature was NaN but it must lie in -100..200 C");
    assertThatThrownBy(() -> SaturationPressure.temperatureC(-1))
        .hasMessageStartingWith("vapour pressure was -1 but it must lie in 0..");
  }
}
