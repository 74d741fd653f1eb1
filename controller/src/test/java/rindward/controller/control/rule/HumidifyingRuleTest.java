package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/** At a steady 14 C, 50 to 70 %: humidified from 53 % up to 59 %. */
class HumidifyingRuleTest {
  private static final Rule RULE = new HumidifyingRule();

  @Test
  void dryAir_isHumidified_andAWhileLonger() {
    assertThat(new Moment().humidity(52.9).request(RULE, HUMIDIFIER))
        .isEqualTo("on DRY DRIER_THAN_WANTED");
    assertThat(new Moment().humidity(53.1).request(RULE, HUMIDIFIER))
        .isEqualTo("off ECONOMY DAMP_ENOUGH");
    assertThat(new Moment().humidity(58.9).on(HUMIDIFIER, 60).request(RULE, HUMIDIFIER))
        .isEqualTo("on DRY STILL_DRY");
    assertThat(new Moment().humidity(59.1).on(HUMIDIFIER, 60).request(RULE, HUMIDIFIER))
        .isEqualTo("off ECONOMY DAMP_ENOUGH");
  }

  /** 3 % of doubt leave 53 to 67 %; of 8 % no more than a quarter of the range is heeded. */
  @Test
  void aDoubtfulProbe_isKeptClearOfBothLimits() {
    assertThat(new Moment().accuracy(0, 3_000).humidity(55).request(RULE, HUMIDIFIER))
        .startsWith("on");
    assertThat(new Moment().accuracy(0, 3_000).humidity(55.2).request(RULE, HUMIDIFIER))
        .startsWith("off");
    assertThat(new Moment().accuracy(0, 8_000).humidity(56.4).request(RULE, HUMIDIFIER))
        .startsWith("on");
    assertThat(new Moment().accuracy(0, 8_000).humidity(56.6).request(RULE, HUMIDIFIER))
        .startsWith("off");
  }

  @Test
  void noHumidifierOrNoHumidity_saysNothing() {
    assertThat(new Moment().humidity(30).without(HUMIDIFIER).request(RULE, HUMIDIFIER))
        .isEqualTo("nothing");
    assertThat(new Moment().vapour(Double.NaN).request(RULE, HUMIDIFIER)).isEqualTo("nothing");
  }
}
