package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.HEATER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;
import rindward.controller.control.SetpointBand;

/** A store heated from 12.3 C up to 14.9 C; see {@link Moment}. */
class HeatingRuleTest {
  private static final Rule RULE = new HeatingRule();

  @Test
  void contact_startsBelowTheBand() {
    assertThat(new Moment().air(12.299).request(RULE, HEATER))
        .isEqualTo("on ECONOMY COLDER_THAN_WANTED");
    assertThat(new Moment().air(12.3).request(RULE, HEATER)).isEqualTo("off ECONOMY WARM_ENOUGH");
  }

  @Test
  void contact_startsATickAheadOfTheAir() {
    assertThat(new Moment().air(12.4).changing(-0.011).request(RULE, HEATER))
        .isEqualTo("on ECONOMY STILL_WARMING");
    assertThat(new Moment().air(12.4).changing(-0.009).request(RULE, HEATER)).startsWith("off");
  }

  @Test
  void contact_stopsAtTheTopOfTheBand_orWhereARunHasLedBefore() {
    assertThat(new Moment().air(14.899).on(HEATER, 60).request(RULE, HEATER)).startsWith("on");
    assertThat(new Moment().air(14.9).on(HEATER, 60).request(RULE, HEATER)).startsWith("off");
    // After 50 s and one tick more the air has done 1 - 1/e of its swing.
    SetpointBand band = new SetpointBand(12_000, 12_300, 14_900, 16_000, false, false);
    double swingK = 2 / (1 - Math.exp(-1));
    assertThat(
            new Moment()
                .learned(swingK, 0.15)
                .target(band)
                .air(13)
                .on(HEATER, 50, 12.899)
                .request(RULE, HEATER))
        .startsWith("on");
    assertThat(
            new Moment()
                .learned(swingK, 0.15)
                .target(band)
                .air(13)
                .on(HEATER, 50, 12.901)
                .request(RULE, HEATER))
        .startsWith("off");
  }

  @Test
  void solidState_followsItsShare() {
    assertThat(new Moment().air(12).solidState(true).request(RULE, HEATER)).startsWith("on");
    assertThat(new Moment().air(12).solidState(false).request(RULE, HEATER)).startsWith("off");
  }

  @Test
  void theReasonTellsWhatTheBandIsFor() {
    Moment cold = new Moment().air(11);
    assertThat(
            cold.target(new SetpointBand(12_000, 13_000, 14_000, 16_000, false, true))
                .request(RULE, HEATER))
        .isEqualTo("on ECONOMY WARMS_TO_DRY");
    assertThat(
            cold.target(new SetpointBand(12_000, 13_000, 14_000, 16_000, true, false))
                .request(RULE, HEATER))
        .isEqualTo("on ECONOMY HOLDS_THE_MIDDLE");
  }

  @Test
  void noHeaterOrNoReading_saysNothing() {
    assertThat(new Moment().air(5).without(HEATER).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(new Moment().air(5).withoutReading().request(RULE, HEATER)).isEqualTo("nothing");
  }
}
