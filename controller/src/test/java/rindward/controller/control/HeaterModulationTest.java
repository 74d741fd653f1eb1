package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import rindward.controller.Any;
import rindward.controller.Seeded;

/**
 * A solid-state heater gives its share in whole ticks and owes or is owed less than one of them.
 */
class HeaterModulationTest {
  @Test
  void asWarmAsWanted_goesOnWithTheShareThatKeptTheRoom() {
    HeaterModulation share = new HeaterModulation(0.3, 0, false);
    int heated = 0;
    for (int tick = 0; tick < 1000; tick++) {
      share = share.next(0, 10);
      heated += share.on() ? 1 : 0;
    }
    assertThat(heated).isEqualTo(300);
  }

  /** What was given is what the shares add up to, but for the part of a tick that is owed. */
  @Seeded
  void givesWhatTheSharesAddUpTo(Any any) {
    HeaterModulation share = HeaterModulation.NONE;
    double wanted = 0;
    int given = 0;
    for (int tick = 0; tick < 200; tick++) {
      double tooColdK = any.doubleBetween(-4, 4);
      share = share.next(tooColdK, 10);
      wanted += Math.min(1, Math.max(0, share.base() + 0.25 * tooColdK));
      given += share.on() ? 1 : 0;
      assertThat(share.carried()).isCloseTo(wanted - given, within(1e-9)).isBetween(-0.5, 0.5);
      assertThat(share.base()).isBetween(0.0, 1.0);
    }
  }

  @Test
  void warmerThanWanted_unlearnsItsShare_andStaysOff() {
    HeaterModulation share = new HeaterModulation(1, 0, true);
    for (int tick = 0; tick < 360; tick++) {
      share = share.next(2, 10);
      assertThat(share.on()).isTrue();
    }
    // A quarter a kelvin in a quarter of an hour: 1 is unlearned in an hour at 1 K.
    for (int tick = 0; tick < 360; tick++) {
      share = share.next(-1, 10);
    }
    assertThat(share.base()).isCloseTo(0, within(1e-9));
    assertThat(share.next(0, 10).on()).isFalse();
  }
}
