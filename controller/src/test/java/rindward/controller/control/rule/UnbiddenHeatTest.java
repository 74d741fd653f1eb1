package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import rindward.controller.room.HeatTrust;

/** A store kept at 12-16 C whose heater does not stop, or stops for another reason than warmth. */
class UnbiddenHeatTest {
  private static final Duration TICK = Duration.ofSeconds(10);
  private static final int FIVE_MINUTES = 30;

  /** It was switched off after 298 s, "still, since nothing heats", at 17.1 C. */
  @Test
  void whileTheRoomGoesOnWarmingWithHeatOff_theFanRunsOn_andSaysWhy() {
    RoomScript room = welded(RoomScript.room().outdoors(25, 60));

    assertThat(room.isOn(HEATER)).isFalse();
    assertThat(room.isOn(CIRCULATION)).isTrue();
    assertThat(room.why(CIRCULATION))
        .isEqualTo(
            "Moves the air: the heater is switched off, yet it went on warming; it is 19 C and the"
                + " upper limit is 16 C.");
    assertThat(room.isOn(EXHAUST)).as("it is warmer outside").isFalse();
  }

  @Test
  void whileTheRoomGoesOnWarmingWithHeatOff_coolerOutdoorAirIsLetIn() {
    RoomScript room = welded(RoomScript.room().outdoors(10, 60));

    assertThat(room.isOn(EXHAUST)).isTrue();
    assertThat(room.why(EXHAUST))
        .startsWith("Airing: the heater is switched off, yet it went on warming; it is 19 C");
  }

  @Test
  void suspicionOutlastsALostProbe_andEndsInTheRange() {
    RoomScript room = welded(RoomScript.room().outdoors(10, 60));

    room.noProbe();
    for (int i = 0; i < 2 * FIVE_MINUTES; i++) {
      assertThat(room.tick().isOn(CIRCULATION)).isTrue();
    }
    assertThat(room.isOn(EXHAUST)).as("nobody knows how cold it would get").isFalse();

    room.air(15, 60);
    for (int i = 0; i < 2 * FIVE_MINUTES; i++) {
      room.tick();
    }
    assertThat(room.isOn(CIRCULATION)).isFalse();
  }

  @Test
  void slowWarmDay_isNoSuspicion() {
    RoomScript room = RoomScript.room().outdoors(25, 60);
    double air = 14;
    for (int i = 0; i < 360 * 6; i++) {
      air += 2.0 / 360;
      room.air(air, 60).tick();
      assertThat(room.why(CIRCULATION)).doesNotContain("went on warming");
    }
  }

  @Test
  void probeFallsSilentWhileHeating_heatStopsAtOnce_andTheFanCarriesItsWarmthAway() {
    RoomScript room = RoomScript.room().air(10, 60).tick().tick();
    assertThat(room.isOn(HEATER)).isTrue();

    room.noProbe();

    assertCarriedAway(room);
    assertThat(room.why(CIRCULATION)).contains("so nothing is switched on");
  }

  @Test
  void blindPulseInFrost_isCarriedAwayToo() {
    RoomScript room = RoomScript.roomHeatedOn(new HeatTrust(true, true)).outdoors(-8, 80);
    for (int i = 0; i < 360; i++) {
      room.air(10, 60).tick();
    }
    room.noProbe();
    while (!room.tick().isOn(HEATER)) {}
    while (room.tick().isOn(HEATER)) {}

    assertThat(room.isOn(CIRCULATION)).isTrue();
  }

  private static void assertCarriedAway(RoomScript room) {
    for (int i = 0; i < FIVE_MINUTES - 1; i++) {
      room.tick();
      assertThat(room.isOn(HEATER)).isFalse();
      assertThat(room.isOn(CIRCULATION)).as("tick " + i).isTrue();
      assertThat(room.why(CIRCULATION)).isEqualTo("Carries the last warmth away from the heater.");
    }
    room.after(TICK).after(TICK).tick();
    assertThat(room.isOn(CIRCULATION)).isFalse();
  }

  /** Heats from 10 C, is commanded off at the upper limit, and warms on to 19 C in ten minutes. */
  private static RoomScript welded(RoomScript room) {
    room.air(10, 60).tick().tick();
    assertThat(room.isOn(HEATER)).isTrue();
    double air = 10;
    for (int i = 0; i < 2 * FIVE_MINUTES; i++) {
      air += 9.0 / (2 * FIVE_MINUTES);
      room.air(air, 60).tick();
    }
    for (int i = 0; i < FIVE_MINUTES; i++) {
      room.air(19, 60).tick();
    }
    return room;
  }
}
