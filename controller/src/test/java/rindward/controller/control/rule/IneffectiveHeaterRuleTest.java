package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/** A heater that warmed nothing in twenty minutes pauses for ten. */
class IneffectiveHeaterRuleTest {
  private static final Rule RULE = new IneffectiveHeaterRule();
  private static final String PAUSES = "off OVERHEATING HEAT_WITHOUT_EFFECT";

  private static Moment heatedFrom12(double seconds, double nowC) {
    return new Moment().air(nowC).on(HEATER, seconds, 12);
  }

  @Test
  void noRiseInTwentyMinutes_pauses() {
    assertThat(heatedFrom12(1_200, 12.199).request(RULE, HEATER)).isEqualTo(PAUSES);
    assertThat(heatedFrom12(1_199, 12.199).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(heatedFrom12(1_200, 12.2).request(RULE, HEATER)).isEqualTo("nothing");
  }

  @Test
  void aProbeThatSaysTheSameForTwentyMinutes_pausesToo() {
    assertThat(heatedFrom12(1_200, 14).unchangedFor(1_200).request(RULE, HEATER)).isEqualTo(PAUSES);
    assertThat(heatedFrom12(1_200, 14).unchangedFor(1_199).request(RULE, HEATER))
        .isEqualTo("nothing");
  }

  @Test
  void thePauseLastsTenMinutes_andOnlyAfterAFailure() {
    assertThat(new Moment().off(HEATER, 599, 12).heatFailed().request(RULE, HEATER))
        .isEqualTo(PAUSES);
    assertThat(new Moment().off(HEATER, 600, 12).heatFailed().request(RULE, HEATER))
        .isEqualTo("nothing");
    assertThat(new Moment().off(HEATER, 599, 12).request(RULE, HEATER)).isEqualTo("nothing");
  }

  @Test
  void whatTheAirWasAtTheStartNotKnown_orNotNow_saysNothing() {
    assertThat(new Moment().on(HEATER, 9_999).request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(heatedFrom12(1_200, 12).withoutReading().request(RULE, HEATER)).isEqualTo("nothing");
  }

  @Test
  void whileAirIsLetOut_theHeaterIsNotJudged_butNoHourIsHeatedInVain() {
    assertThat(heatedFrom12(1_500, 11.4).on(EXHAUST, 60).request(RULE, HEATER))
        .isEqualTo("nothing");
    assertThat(heatedFrom12(3_599, 11.4).on(EXHAUST, 60).request(RULE, HEATER))
        .isEqualTo("nothing");
    assertThat(heatedFrom12(3_600, 11.4).on(EXHAUST, 60).request(RULE, HEATER)).isEqualTo(PAUSES);
  }

  @Test
  void afterAirWasLetOut_theHeaterHasItsTwentyMinutesAnew() {
    assertThat(heatedFrom12(2_000, 11.4).off(EXHAUST, 1_199, 12).request(RULE, HEATER))
        .isEqualTo("nothing");
    assertThat(heatedFrom12(2_000, 11.4).off(EXHAUST, 1_200, 12).request(RULE, HEATER))
        .isEqualTo(PAUSES);
  }

  @Test
  void aProbeThatSaysTheSame_pausesWhateverElseRuns() {
    assertThat(heatedFrom12(1_200, 14).on(EXHAUST, 60).unchangedFor(1_200).request(RULE, HEATER))
        .isEqualTo(PAUSES);
  }
}
