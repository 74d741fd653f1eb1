package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.EXHAUST;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;

/** Fresh air is given from 0.3 volumes on in kind hours, and overdue above 1.5 in any. */
class FreshAirRuleTest {
  private static final Rule RULE = new FreshAirRule();

  private static Moment winter(double nowC) {
    return new Moment().outdoors(nowC, Double.NaN, 5, 2, 10);
  }

  private static Moment summer(double nowC) {
    return new Moment().outdoors(nowC, Double.NaN, 20, 16, 24);
  }

  @Test
  void owedAir_isGivenWhenItIsWorthIt_andToTheEnd() {
    assertThat(new Moment().owed(0.301).request(RULE, EXHAUST)).isEqualTo("on DRY FRESH_AIR");
    assertThat(new Moment().owed(0.3).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(winter(3).owed(0.01).on(EXHAUST, 60).request(RULE, EXHAUST)).startsWith("on DRY");
    assertThat(winter(3).owed(0).on(EXHAUST, 60).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void winter_theWarmestQuarterOfTheDayIsKind() {
    assertThat(winter(8).owed(1).request(RULE, EXHAUST)).startsWith("on DRY");
    assertThat(winter(7.99).owed(1).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void summer_theColdestQuarterOfTheDayIsKind() {
    assertThat(summer(18).owed(1).request(RULE, EXHAUST)).startsWith("on DRY");
    assertThat(summer(18.01).owed(1).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void overdueAir_waitsForNoKindHour() {
    assertThat(winter(3).owed(1.5).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(winter(3).owed(1.501).request(RULE, EXHAUST)).startsWith("on DRY");
  }

  @Test
  void noExhaustOrNoReading_saysNothing() {
    assertThat(new Moment().owed(2).without(EXHAUST).request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(new Moment().owed(2).withoutReading().request(RULE, EXHAUST)).isEqualTo("nothing");
  }
}
