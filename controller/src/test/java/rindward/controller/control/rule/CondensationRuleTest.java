package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;
import rindward.hardware.air.SaturationPressure;

/** Fruit at 10 C stays dry while the dew point is at most 8.5 C. */
class CondensationRuleTest {
  private static final Rule RULE = new CondensationRule();
  private static final double CAP_PA = SaturationPressure.overIceOrWaterPa(8.5);

  private static Moment dewPoint(double dewPointC) {
    return new Moment().fruit(10).vapour(SaturationPressure.overIceOrWaterPa(dewPointC));
  }

  @Test
  void dewPointNearTheFruit_isNotHumidified() {
    assertThat(dewPoint(8.501).request(RULE, HUMIDIFIER))
        .isEqualTo("off CONDENSATION FRUIT_WOULD_GET_WET");
    assertThat(dewPoint(8.5).request(RULE, HUMIDIFIER)).isEqualTo("nothing");
    assertThat(dewPoint(12).request(RULE, HEATER)).isEqualTo("nothing");
  }

  @Test
  void dewPointNearTheFruit_isAiredWithClearlyDrierAirOnly() {
    assertThat(dewPoint(9).outdoors(5, CAP_PA - 81).request(RULE, EXHAUST))
        .isEqualTo("on CONDENSATION KEEPS_FRUIT_DRY");
    assertThat(dewPoint(9).outdoors(5, CAP_PA - 79).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(dewPoint(8).outdoors(5, CAP_PA - 300).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void outdoorAirThatWouldWetTheFruit_isKeptOut() {
    assertThat(dewPoint(5).outdoors(15, CAP_PA + 1).request(RULE, EXHAUST))
        .isEqualTo("off CONDENSATION OUTDOOR_WOULD_WET_FRUIT");
    assertThat(dewPoint(5).outdoors(15, CAP_PA - 1).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void outdoorAirAboveTheCapButDrierThanInside_isNotKeptOut() {
    double insidePa = SaturationPressure.overIceOrWaterPa(10);
    assertThat(dewPoint(10).outdoors(15, insidePa - 1).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(dewPoint(10).outdoors(15, insidePa + 1).request(RULE, EXHAUST))
        .isEqualTo("off CONDENSATION OUTDOOR_WOULD_WET_FRUIT");
  }

  @Test
  void humidityNotKnown_saysNothing() {
    assertThat(dewPoint(12).outdoors(15).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(new Moment().fruit(2).vapour(Double.NaN).outdoors(5, 900).request(RULE, EXHAUST))
        .isEqualTo("nothing");
  }
}
