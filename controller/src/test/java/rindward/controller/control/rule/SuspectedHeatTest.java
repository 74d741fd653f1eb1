package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.Rule;
import rindward.controller.control.SuspectedHeat;

/** Heat that nobody asked for is kept moving, and let out where outdoors is a kelvin colder. */
class SuspectedHeatTest {
  private static final Rule RULE = new SuspectedHeat();

  @Test
  void suspectedHeat_isKeptMoving() {
    assertThat(new Moment().heatSuspected().request(RULE, CIRCULATION))
        .isEqualTo("on OVERHEATING MOVES_UNBIDDEN_HEAT");
    assertThat(new Moment().heatSuspected().request(RULE, HEATER)).isEqualTo("nothing");
    assertThat(new Moment().request(RULE, CIRCULATION)).isEqualTo("nothing");
  }

  @Test
  void suspectedHeat_isLetOutOnlyIntoColderAir() {
    assertThat(new Moment().heatSuspected().outdoors(12.999).request(RULE, EXHAUST))
        .isEqualTo("on OVERHEATING AIRS_UNBIDDEN_HEAT");
    assertThat(new Moment().heatSuspected().outdoors(13).request(RULE, EXHAUST))
        .isEqualTo("nothing");
    assertThat(new Moment().heatSuspected().request(RULE, EXHAUST)).isEqualTo("nothing");
    assertThat(new Moment().outdoors(0).request(RULE, EXHAUST)).isEqualTo("nothing");
  }

  @Test
  void blind_theFanRunsOn_andNothingIsLetOut() {
    Moment blind = new Moment().heatSuspected().outdoors(0).withoutReading();
    assertThat(blind.request(RULE, CIRCULATION)).isEqualTo("on OVERHEATING MOVES_BLIND");
    assertThat(blind.request(RULE, EXHAUST)).isEqualTo("nothing");
  }
}
