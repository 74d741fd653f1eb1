package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.DEHUMIDIFIER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/** Above the range nothing heats; far above it, the room is cooled by whatever can. */
class OverheatingRuleTest {
  private static final Rule RULE = new OverheatingRule();

  @Test
  void atTheUpperLimit_saysNothing() {
    assertThat(new Moment().air(16).request(RULE, HEATER)).isEqualTo("nothing");
  }

  @Test
  void aboveTheLimit_onlyStopsTheHeat() {
    for (double airC : new double[] {16.001, 18}) {
      Moment warm = new Moment().outdoors(5).air(airC);
      assertThat(warm.request(RULE, HEATER)).isEqualTo("off DAMP TOO_WARM_TO_HEAT");
      assertThat(warm.request(RULE, EXHAUST)).isEqualTo("nothing");
      assertThat(warm.request(RULE, COOLER)).isEqualTo("nothing");
      assertThat(warm.request(RULE, DEHUMIDIFIER)).isEqualTo("nothing");
    }
  }

  @Test
  void farAbove_coolsAndMakesNoHeat() {
    Moment hot = new Moment().air(18.001);
    assertThat(hot.request(RULE, HEATER)).isEqualTo("off OVERHEATING TOO_WARM_TO_HEAT");
    assertThat(hot.request(RULE, DEHUMIDIFIER)).isEqualTo("off OVERHEATING TOO_WARM_TO_HEAT");
    assertThat(hot.request(RULE, COOLER)).isEqualTo("on OVERHEATING COOLS");
    assertThat(hot.request(RULE, HUMIDIFIER)).isEqualTo("nothing");
  }

  @Test
  void farAbove_isAiredOnlyIfOutdoorsIsAKelvinColder() {
    Moment hot = new Moment().air(19);
    assertThat(hot.request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(hot.outdoors(18).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(hot.outdoors(17.999).request(RULE, EXHAUST))
        .isEqualTo("on OVERHEATING COOLS_WITH_OUTDOOR_AIR");
  }

  @Test
  void probesThatDiffer_theWarmerIsBelievedAndTheDisputeTold() {
    assertThat(new Moment().probes(13.001, 16.001).request(RULE, HEATER))
        .isEqualTo("off DAMP TOO_WARM_TO_HEAT");
    assertThat(new Moment().probes(13, 16.001).request(RULE, HEATER))
        .isEqualTo("off DAMP PROBES_DISPUTE_HEAT");
  }

  @Test
  void noReading_saysNothing() {
    assertThat(new Moment().air(30).withoutReading().request(RULE, HEATER)).isEqualTo("nothing");
  }
}
