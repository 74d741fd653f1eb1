package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.DEHUMIDIFIER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/** Near freezing: warmth and moving air, and nothing that cools or wets. */
class FrostRuleTest {
  private static final Rule RULE = new FrostRule();

  @Test
  void belowTwoDegrees_warmsAndClosesAllThatCools() {
    Moment cold = new Moment().air(1.999);
    assertThat(cold.request(RULE, HEATER)).isEqualTo("on FROST NEAR_FREEZING");
    assertThat(cold.request(RULE, CIRCULATION)).isEqualTo("on FROST NEAR_FREEZING");
    assertThat(cold.request(RULE, EXHAUST)).isEqualTo("off FROST NEAR_FREEZING");
    assertThat(cold.request(RULE, HUMIDIFIER)).isEqualTo("off FROST NEAR_FREEZING");
    assertThat(cold.request(RULE, COOLER)).isEqualTo("off FROST NEAR_FREEZING");
    assertThat(cold.request(RULE, DEHUMIDIFIER)).isEqualTo("nothing");
  }

  @Test
  void atTwoDegrees_saysNothing() {
    for (OutputKind kind : OutputKind.values()) {
      assertThat(new Moment().air(2).request(RULE, kind)).isEqualTo("nothing");
    }
  }

  @Test
  void theColdestProbeIsBelieved() {
    assertThat(new Moment().probes(1.9, 14).request(RULE, HEATER)).startsWith("on FROST");
    assertThat(new Moment().probes(1.9, 14).withoutReading().request(RULE, HEATER))
        .isEqualTo("nothing");
  }
}
