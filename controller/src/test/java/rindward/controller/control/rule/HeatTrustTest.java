package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.HEATER;
import static rindward.hardware.OutputKind.HUMIDIFIER;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputDecision;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.RoomDemand;

/** When a store kept at 12-16 C is heated although something that heat relies on is missing. */
class HeatTrustTest {
  private static final HeatTrust BLIND = new HeatTrust(true, true);
  private static final Duration HOUR = Duration.ofHours(1);
  private static final Duration TICK = Duration.ofSeconds(10);

  @Test
  void fanSwitchedOffByHand_stopsTheHeatThatItCarries() {
    RoomScript room = RoomScript.room().air(1, 60).tick();
    assertThat(room.isOn(HEATER)).isTrue();

    fanOff(room);

    assertThat(room.isOn(HEATER)).isFalse();
    assertThat(room.why(HEATER))
        .isEqualTo("Heating waits for the fan that carries its heat away from it.");
  }

  @Test
  void heaterWithAFanOfItsOwn_doesNotWaitForAnother() {
    RoomScript room = RoomScript.roomHeatedOn(new HeatTrust(false, false)).air(1, 60).tick();

    fanOff(room);

    assertThat(room.isOn(HEATER)).isTrue();
  }

  @Test
  void probesLostInFrost_heatsInPulsesForHalfTheShareOfLate() {
    RoomScript room = RoomScript.roomHeatedOn(BLIND).outdoors(-8, 80);
    double share = heatedHalfTheTime(room);

    room.noProbe().tick();
    assertThat(room.isOn(HEATER)).as("off at first, whatever the share").isFalse();
    assertThat(room.why(HEATER)).startsWith("No probe here can be trusted and it is -8 C outside");

    int heated = 0;
    int sinceHeat = 0;
    int ticks = (int) Duration.ofHours(11).dividedBy(TICK);
    for (int i = 0; i < ticks; i++) {
      heated += room.tick().isOn(HEATER) ? 1 : 0;
      sinceHeat = room.isOn(HEATER) ? 0 : sinceHeat + 1;
      if (heated > 0) {
        assertThat(room.isOn(CIRCULATION)).isEqualTo(sinceHeat < 30);
      }
      assertThat(room.isOn(HUMIDIFIER)).isFalse();
    }
    // A round of half an hour is 180 ticks, so that a pulse is counted to one tick in 180.
    assertThat((double) heated / ticks)
        .isBetween(share / 2 - 1 / 180.0, share / 2 + 1 / 180.0)
        .isLessThanOrEqualTo(0.5);
  }

  @Test
  void probesLostInFrost_endsAfterTwelveHours() {
    RoomScript room = RoomScript.roomHeatedOn(BLIND).outdoors(-8, 80);
    heatedHalfTheTime(room);

    room.noProbe().after(HOUR.multipliedBy(12));

    room.after(Duration.ofMinutes(5));
    for (int i = 0; i < 720; i++) {
      assertThat(room.tick().rulings().values()).noneMatch(OutputDecision::on);
    }
    assertThat(room.why(HEATER)).contains("so nothing is switched on");
  }

  @Test
  void probesLost_nothingIsHeatedWithoutLeaveOrWithoutFrost() {
    for (RoomScript room :
        List.of(
            RoomScript.room().outdoors(-8, 80), RoomScript.roomHeatedOn(BLIND).outdoors(3, 80))) {
      heatedHalfTheTime(room);
      room.noProbe();
      for (int i = 0; i < 360; i++) {
        assertThat(room.tick().rulings().values()).noneMatch(OutputDecision::on);
      }
    }
  }

  @Test
  void roomThatCannotBePutRight_saysWhat() {
    assertThat(RoomScript.roomWith(HUMIDIFIER).air(9, 60).after(HOUR).beyond())
        .isEqualTo("Colder than wanted, 9 C instead of 12 C, and this room has no heater.");
    assertThat(RoomScript.roomWith(HEATER).air(14, 40).after(HOUR).beyond())
        .isEqualTo("Drier than wanted, 40 % instead of 50 %, and this room has no humidifier.");
    assertThat(RoomScript.roomWith(HEATER).outdoors(24, 50).air(20, 60).after(HOUR).beyond())
        .isEqualTo("Warmer than wanted, 20 C, and nothing here can cool it: it is 24 C outside.");
    assertThat(RoomScript.room().outdoors(24, 50).air(20, 60).after(HOUR).beyond()).isEmpty();
  }

  private static void fanOff(RoomScript room) {
    room.ordered(
            o ->
                new RoomDemand(
                    o.range(),
                    o.slideMilliCPerDay(),
                    o.stock(),
                    List.of(new ManualCommand(CIRCULATION, false, room.now().plus(HOUR), "Ada"))))
        .tick();
  }

  /** Lets a day pass in which the heater runs in about half of it; returns the learned share. */
  private static double heatedHalfTheTime(RoomScript room) {
    for (int i = 0; i < 48; i++) {
      room.air(11, 60).after(Duration.ofMinutes(15)).air(15.9, 60).after(Duration.ofMinutes(15));
    }
    double share = room.memory().estimate().duty().share();
    assertThat(share).isBetween(0.2, 0.6);
    return share;
  }
}
