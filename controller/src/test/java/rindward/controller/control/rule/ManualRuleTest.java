package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Rule;

/** What was switched by hand holds until its end, that instant no longer. */
class ManualRuleTest {
  private static final Rule RULE = new ManualRule();

  @Test
  void commandsHoldUntilTheyEnd() {
    Moment on = new Moment().said(EXHAUST, true, Moment.AT.plusSeconds(1));
    assertThat(on.request(RULE, EXHAUST)).isEqualTo("on MANUAL_ON ON_BY_HAND");
    assertThat(on.request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(new Moment().said(HEATER, false, Moment.AT.plusSeconds(1)).request(RULE, HEATER))
        .isEqualTo("off MANUAL_OFF OFF_BY_HAND");
    assertThat(new Moment().said(HEATER, false, Moment.AT).request(RULE, HEATER))
        .isEqualTo("nothing");
  }

  @Test
  void theReasonTellsTheMinutesLeft_thePresentOneCounted() {
    assertThat(minutesLeft(1)).isEqualTo(1_000);
    assertThat(minutesLeft(59)).isEqualTo(1_000);
    assertThat(minutesLeft(60)).isEqualTo(2_000);
    assertThat(minutesLeft(86_400L * 365)).isEqualTo(100_000_000);
  }

  private static int minutesLeft(long seconds) {
    OutputRequests requests = new OutputRequests();
    new Moment()
        .said(EXHAUST, true, Moment.AT.plusSeconds(seconds))
        .request(RULE, EXHAUST, requests);
    return requests.of(EXHAUST).reason().first();
  }
}
