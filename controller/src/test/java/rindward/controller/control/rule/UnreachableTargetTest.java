package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.DEHUMIDIFIER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Reason;
import rindward.controller.control.UnreachableTarget;
import rindward.hardware.air.SaturationPressure;

/** What no output of the room can put right is said, and nothing else. */
class UnreachableTargetTest {
  private static final double SATURATED_PA = SaturationPressure.overIceOrWaterPa(14);

  private static String said(Moment moment) {
    Reason reason = UnreachableTarget.of(moment.input());
    return reason == null ? "nothing" : reason.because().name();
  }

  @Test
  void cold_whereNothingHeats() {
    assertThat(said(new Moment().lastHour(11.999).without(HEATER))).isEqualTo("CANNOT_WARM");
    assertThat(said(new Moment().lastHour(12).without(HEATER))).isEqualTo("nothing");
    assertThat(said(new Moment().lastHour(11.999))).isEqualTo("nothing");
  }

  @Test
  void warm_whereNothingCoolsAndOutdoorsIsNoColder() {
    assertThat(said(warm().outdoors(16.001))).isEqualTo("CANNOT_COOL");
    assertThat(said(warm().outdoors(16))).isEqualTo("nothing");
    assertThat(said(warm().outdoors(5).without(EXHAUST))).isEqualTo("CANNOT_COOL");
    assertThat(said(warm())).as("nothing known of outdoors").isEqualTo("nothing");
    assertThat(said(new Moment().lastHour(16.001).outdoors(25))).isEqualTo("nothing");
    assertThat(said(warm().lastHour(16).outdoors(25))).isEqualTo("nothing");
  }

  private static Moment warm() {
    return new Moment().lastHour(16.001).without(COOLER);
  }

  @Test
  void damp_whereNothingDriesAndOutdoorsHoldsNoLess() {
    assertThat(said(damp().outdoors(20, 0.711 * SATURATED_PA))).isEqualTo("CANNOT_DRY");
    assertThat(said(damp().outdoors(5, 0.709 * SATURATED_PA))).isEqualTo("nothing");
    assertThat(said(damp().outdoors(5, 300).without(EXHAUST))).isEqualTo("CANNOT_DRY");
    assertThat(said(damp().outdoors(20))).as("no humidity outdoors").isEqualTo("nothing");
    assertThat(said(new Moment().humidity(71).outdoors(20, 2_000))).isEqualTo("nothing");
    assertThat(said(damp().humidity(69.9).outdoors(20, 2_000))).isEqualTo("nothing");
  }

  private static Moment damp() {
    return new Moment().humidity(71).without(DEHUMIDIFIER);
  }

  @Test
  void dry_whereNothingMoistens() {
    assertThat(said(new Moment().humidity(49.9).without(HUMIDIFIER))).isEqualTo("CANNOT_MOISTEN");
    assertThat(said(new Moment().humidity(50.1).without(HUMIDIFIER))).isEqualTo("nothing");
    assertThat(said(new Moment().humidity(49.9))).isEqualTo("nothing");
    assertThat(said(new Moment().vapour(Double.NaN).without(HUMIDIFIER))).isEqualTo("nothing");
  }

  @Test
  void roomThatRestsOrIsBlind_saysNothing() {
    assertThat(said(new Moment().lastHour(5).without(HEATER).rests())).isEqualTo("nothing");
    assertThat(said(new Moment().lastHour(5).without(HEATER).withoutReading()))
        .isEqualTo("nothing");
  }
}
