package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.DEHUMIDIFIER;
import static rindward.hardware.OutputKind.EXHAUST;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;
import rindward.hardware.air.SaturationPressure;

/** A store that may hold 70 % at 14 C: damp air is warmed, then aired if that dries, then dried. */
class DryingRuleTest {
  private static final Rule RULE = new DryingRule();
  private static final double SATURATED_PA = SaturationPressure.overIceOrWaterPa(14);
  private static final double DAMP_PA = 0.71 * SATURATED_PA;

  private static Moment damp(double pct) {
    return new Moment().humidity(pct);
  }

  @Test
  void damp_isAiredWithClearlyDrierAirOnly() {
    assertThat(damp(71).outdoors(5, DAMP_PA - 81).request(RULE, EXHAUST))
        .isEqualTo("on DAMP DRIES_BY_AIRING");
    assertThat(damp(71).outdoors(5, DAMP_PA - 79).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(damp(71).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(damp(69.9).outdoors(5, 300).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void damp_isNeverAiredWithAirThatHoldsMore() {
    assertThat(damp(71).outdoors(15, DAMP_PA + 1).request(RULE, EXHAUST))
        .isEqualTo("off DAMP OUTDOOR_HOLDS_MORE");
    assertThat(damp(69.9).outdoors(15, DAMP_PA + 1).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void airing_goesOnForFourPercentOfTheLimit() {
    assertThat(damp(67.3).on(EXHAUST, 600).outdoors(5, 300).request(RULE, EXHAUST))
        .isEqualTo("on DAMP STILL_AIRING");
    assertThat(damp(67.1).on(EXHAUST, 600).outdoors(5, 300).request(RULE, EXHAUST))
        .isEqualTo("nothing");
    assertThat(damp(67.3).outdoors(5, 300).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void machine_driesWhereAiringCannot_andOnlyThere() {
    assertThat(damp(71).request(RULE, DEHUMIDIFIER)).isEqualTo("on DAMP DRIES");
    assertThat(damp(71).outdoors(5, DAMP_PA - 79).request(RULE, DEHUMIDIFIER))
        .startsWith("on DAMP");
    assertThat(damp(71).outdoors(5, DAMP_PA - 81).request(RULE, DEHUMIDIFIER))
        .isEqualTo("off ECONOMY DRY_ENOUGH");
    assertThat(damp(71).outdoors(5, DAMP_PA - 81).without(EXHAUST).request(RULE, DEHUMIDIFIER))
        .startsWith("on DAMP");
    assertThat(damp(69.9).request(RULE, DEHUMIDIFIER)).isEqualTo("off ECONOMY DRY_ENOUGH");
  }

  @Test
  void machine_goesOnForFourPercentOfTheLimit() {
    assertThat(damp(67.3).on(DEHUMIDIFIER, 600).request(RULE, DEHUMIDIFIER))
        .isEqualTo("on DAMP STILL_DRYING");
    assertThat(damp(67.1).on(DEHUMIDIFIER, 600).request(RULE, DEHUMIDIFIER)).startsWith("off");
  }

  @Test
  void airThatIsStillToBeWarmed_isNotDriedYet() {
    Moment cool = damp(80).outdoors(0, 300);
    assertThat(cool.air(12).request(RULE, EXHAUST)).startsWith("on DAMP");
    assertThat(cool.air(11.999).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(damp(80).air(12).request(RULE, DEHUMIDIFIER)).startsWith("on DAMP");
    assertThat(damp(80).air(11.999).request(RULE, DEHUMIDIFIER)).startsWith("off");
  }

  @Test
  void aDoubtfulProbe_isKeptClearOfTheLimit() {
    assertThat(damp(67.1).accuracy(0, 3_000).request(RULE, DEHUMIDIFIER)).startsWith("on DAMP");
    assertThat(damp(66.9).accuracy(0, 3_000).request(RULE, DEHUMIDIFIER)).startsWith("off");
  }

  @Test
  void humidityNotKnown_saysNothing() {
    assertThat(damp(90).vapour(Double.NaN).request(RULE, DEHUMIDIFIER)).isEqualTo("nothing");
  }
}
