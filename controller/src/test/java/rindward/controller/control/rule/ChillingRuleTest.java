package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/**
 * Near what harms the stock: warmth, and no cold air; a doubtful probe is feared, not hoped for.
 */
class ChillingRuleTest {
  private static final Rule RULE = new ChillingRule();

  private static Moment squash(double airC) {
    return new Moment().mindsColdBelow(10).accuracy(500, 0).air(airC);
  }

  @Test
  void nearerThanTheProbeCanTell_warmsAndKeepsColdAirOut() {
    assertThat(squash(10.499).request(RULE, HEATER)).isEqualTo("on CHILLING STOCK_WOULD_CHILL");
    assertThat(squash(10.499).request(RULE, EXHAUST)).isEqualTo("off CHILLING STOCK_WOULD_CHILL");
    assertThat(squash(10.499).request(RULE, COOLER)).isEqualTo("off CHILLING STOCK_WOULD_CHILL");
    assertThat(squash(10.499).request(RULE, HUMIDIFIER)).isEqualTo("nothing");
  }

  @Test
  void clearOfIt_saysNothing() {
    assertThat(squash(10.5).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(squash(10.5).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(squash(10.5).request(RULE, COOLER)).isEqualTo("nothing");
  }

  @Test
  void theColderOfProbeAndAirIsBelieved() {
    assertThat(squash(14).probes(10.4, 14).request(RULE, EXHAUST)).startsWith("off CHILLING");
    assertThat(squash(10.4).probes(11, 11).request(RULE, EXHAUST)).startsWith("off CHILLING");
    assertThat(squash(10.6).probes(11, 11).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void anotherProbeAboveTheCeiling_noHeatButNoColdAirEither() {
    assertThat(squash(10.4).probes(10.4, 15.5).request(RULE, HEATER)).startsWith("on CHILLING");
    assertThat(squash(10.4).probes(10.4, 15.501).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(squash(10.4).probes(10.4, 15.501).request(RULE, COOLER)).startsWith("off CHILLING");
  }

  @Test
  void aThresholdAboveTheRange_countsOnlyUpToItsTop() {
    assertThat(new Moment().mindsColdBelow(20).air(15.999).request(RULE, EXHAUST))
        .startsWith("off CHILLING");
    assertThat(new Moment().mindsColdBelow(20).air(16).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void stockThatMindsNoCold_orNoReading_saysNothing() {
    assertThat(new Moment().air(3).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(squash(3).withoutReading().request(RULE, HEATER)).isEqualTo("nothing");
  }
}
