package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;
import rindward.hardware.OutputKind;

/** The fan runs with what it carries, five minutes after, and five minutes an hour. */
class CirculationRuleTest {
  private static final Rule RULE = new CirculationRule();

  private static String after(Moment moment, OutputKind requested) {
    OutputRequests before = new OutputRequests();
    before.on(requested, Precedence.ECONOMY, Reason.of(ReasonCode.COLDER_THAN_WANTED));
    return moment.request(RULE, CIRCULATION, before);
  }

  @Test
  void heatAndMist_areSharedOut() {
    assertThat(after(new Moment(), HEATER)).isEqualTo("on ECONOMY SHARES_OUT");
    assertThat(after(new Moment(), HUMIDIFIER)).isEqualTo("on ECONOMY SHARES_OUT");
    assertThat(after(new Moment().off(CIRCULATION, 60, 14), COOLER)).startsWith("off");
    assertThat(new Moment().on(HEATER, 60).request(RULE, CIRCULATION)).startsWith("on");
    assertThat(new Moment().on(HUMIDIFIER, 60).request(RULE, CIRCULATION)).startsWith("on");
    assertThat(after(new Moment().off(CIRCULATION, 60, 14).without(HEATER), HEATER))
        .startsWith("off");
  }

  @Test
  void heat_isCarriedAwayForFiveMinutes_ifTheFanRunsAlready() {
    assertThat(new Moment().on(CIRCULATION, 900).heated(299).request(RULE, CIRCULATION))
        .isEqualTo("on ECONOMY CARRIES_AWAY");
    assertThat(new Moment().on(CIRCULATION, 900).heated(300).request(RULE, CIRCULATION))
        .isEqualTo("off ECONOMY NOTHING_TO_SHARE");
    assertThat(new Moment().off(CIRCULATION, 60, 14).heated(60).request(RULE, CIRCULATION))
        .startsWith("off");
  }

  @Test
  void noCornerIsForgotten() {
    assertThat(new Moment().off(CIRCULATION, 3_601, 14).request(RULE, CIRCULATION))
        .isEqualTo("on ECONOMY STIRS");
    assertThat(new Moment().off(CIRCULATION, 3_600, 14).request(RULE, CIRCULATION))
        .isEqualTo("off ECONOMY NOTHING_TO_SHARE");
    assertThat(new Moment().on(CIRCULATION, 299).request(RULE, CIRCULATION))
        .isEqualTo("on ECONOMY STIRS");
    assertThat(new Moment().on(CIRCULATION, 300).request(RULE, CIRCULATION)).startsWith("off");
  }

  @Test
  void noReading_saysNothing() {
    assertThat(after(new Moment().withoutReading(), HEATER)).isEqualTo("nothing");
  }
}
