package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.EXHAUST;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/** A store that may reach 16 C is cooled from 15.5 C on, at night already before a warm day. */
class CoolingRuleTest {
  private static final Rule RULE = new CoolingRule();
  private static final double TWO_HOURS = 7_200;

  private static Moment coolOutside(double airC) {
    return new Moment().outdoors(9).air(airC);
  }

  private static Moment beforeAWarmDay(double airC) {
    return new Moment().outdoors(9, Double.NaN, 12, 9, 15.001).air(airC);
  }

  @Test
  void warmRoom_isAiredFromHalfAKelvinBelowTheLimit_andForHalfAKelvin() {
    assertThat(coolOutside(15.501).request(RULE, EXHAUST))
        .isEqualTo("on ECONOMY COOLS_WITH_OUTDOOR_AIR");
    assertThat(coolOutside(15.5).request(RULE, EXHAUST)).isEqualTo("off ECONOMY NO_NEED_TO_AIR");
    assertThat(coolOutside(15.001).on(EXHAUST, 60).request(RULE, EXHAUST)).startsWith("on");
    assertThat(coolOutside(15).on(EXHAUST, 60).request(RULE, EXHAUST)).startsWith("off");
  }

  @Test
  void airedOnlyWithAirThatIsClearlyColder() {
    assertThat(new Moment().air(15.501).outdoors(14).request(RULE, EXHAUST)).startsWith("on");
    assertThat(new Moment().air(15.501).outdoors(14.001).request(RULE, EXHAUST)).startsWith("off");
    assertThat(new Moment().air(17).outdoors(25).request(RULE, EXHAUST)).startsWith("off");
    assertThat(new Moment().air(17).request(RULE, EXHAUST)).startsWith("off");
  }

  @Test
  void aShortWarmth_orOneThatHasGone_isNoReasonToAir() {
    assertThat(coolOutside(16).lastHour(15.5).request(RULE, EXHAUST)).startsWith("off");
    assertThat(coolOutside(15.5).lastHour(16).request(RULE, EXHAUST)).startsWith("off");
  }

  @Test
  void warmDayAhead_isAiredDownToTheLowerEdge() {
    assertThat(beforeAWarmDay(13.601).request(RULE, EXHAUST))
        .isEqualTo("on ECONOMY COOLS_FOR_THE_DAY");
    assertThat(beforeAWarmDay(13.6).request(RULE, EXHAUST)).startsWith("off");
    assertThat(beforeAWarmDay(12.801).on(EXHAUST, 60).request(RULE, EXHAUST)).startsWith("on");
    assertThat(beforeAWarmDay(12.8).on(EXHAUST, 60).request(RULE, EXHAUST)).startsWith("off");
    Moment mild = new Moment().outdoors(9, Double.NaN, 12, 9, 15).air(13.7);
    assertThat(mild.request(RULE, EXHAUST)).startsWith("off");
  }

  @Test
  void heatedLately_isNotCooled() {
    assertThat(coolOutside(17).heated(TWO_HOURS - 1).request(RULE, EXHAUST)).startsWith("off");
    assertThat(coolOutside(17).heated(TWO_HOURS).request(RULE, EXHAUST)).startsWith("on");
    assertThat(coolOutside(17).heated(TWO_HOURS - 1).request(RULE, COOLER)).startsWith("off");
    assertThat(coolOutside(17).heated(TWO_HOURS).request(RULE, COOLER)).startsWith("on");
  }

  @Test
  void cooler_startsHalfAKelvinBelowTheLimit_andGoesOnForAKelvin() {
    assertThat(new Moment().air(15.501).request(RULE, COOLER)).isEqualTo("on ECONOMY COOLS");
    assertThat(new Moment().air(15.5).request(RULE, COOLER)).isEqualTo("off ECONOMY COOL_ENOUGH");
    assertThat(new Moment().air(14.501).on(COOLER, 600).request(RULE, COOLER)).startsWith("on");
    assertThat(new Moment().air(14.5).on(COOLER, 600).request(RULE, COOLER)).startsWith("off");
  }

  @Test
  void noReading_saysNothing() {
    assertThat(new Moment().withoutReading().request(RULE, COOLER)).isEqualTo("nothing");
    assertThat(new Moment().withoutReading().request(RULE, EXHAUST)).isEqualTo("nothing");
  }
}
