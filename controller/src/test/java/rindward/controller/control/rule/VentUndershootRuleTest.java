package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.EXHAUST;

import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.control.Rule;

/**
 * Airing may leave 12.3 C behind; half a minute of it takes 7.5 % of what it is colder outdoors.
 */
class VentUndershootRuleTest {
  private static final Rule RULE = new VentUndershootLimit();

  private static String airing(Moment moment) {
    OutputRequests before = new OutputRequests();
    before.on(EXHAUST, Precedence.DAMP, Reason.of(ReasonCode.DRIES_BY_AIRING));
    return moment.request(RULE, EXHAUST, before);
  }

  @Test
  void airThatStaysAboveTheEdge_isExchanged() {
    assertThat(airing(new Moment().air(13.05).outdoors(3.05))).startsWith("on DAMP");
    assertThat(airing(new Moment().air(13.04).outdoors(3.04)))
        .isEqualTo("off DAMP AIRING_WOULD_COOL_TOO_FAR");
  }

  @Test
  void airingThatRuns_isJudgedByItsNextTick() {
    // Ten seconds of it take 2.5 %.
    assertThat(airing(new Moment().air(12.55).outdoors(2.55).on(EXHAUST, 60)))
        .startsWith("on DAMP");
    assertThat(airing(new Moment().air(12.54).outdoors(2.54).on(EXHAUST, 60))).startsWith("off");
  }

  @Test
  void aDipThatChillsIsRefusedInTheNameOfTheStock() {
    assertThat(airing(new Moment().air(12.06).outdoors(2.06))).startsWith("off DAMP");
    assertThat(airing(new Moment().air(12.04).outdoors(2.04))).startsWith("off CHILLING");
    assertThat(airing(new Moment().mindsColdBelow(11.49).air(12.55).outdoors(2.55)))
        .startsWith("off DAMP");
    assertThat(airing(new Moment().mindsColdBelow(11.49).accuracy(20, 0).air(12.55).outdoors(2.55)))
        .startsWith("off CHILLING");
  }

  @Test
  void nobodyAirs_orNothingIsKnown_changesNothing() {
    assertThat(new Moment().air(12).outdoors(-20).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(airing(new Moment().air(12))).startsWith("on DAMP");
    assertThat(airing(new Moment().air(12).outdoors(-20).withoutReading())).startsWith("on DAMP");
  }
}
