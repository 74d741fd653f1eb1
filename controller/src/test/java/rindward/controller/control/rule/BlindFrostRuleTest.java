package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.CIRCULATION;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import org.junit.jupiter.api.Test;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Rule;
import rindward.controller.room.HeatTrust;
import rindward.hardware.OutputKind;

/** Without a reading all is off; in frost, a room that may is heated in pulses for twelve hours. */
class BlindFrostRuleTest {
  private static final Rule NOTHING_KNOWN = new NothingKnownRule();
  private static final Rule BLIND_FROST = new BlindFrostRule();
  private static final HeatTrust ALLOWED = new HeatTrust(true, true);

  /** Half its time the heater ran, so that 450 s of each 1800 s are heated. */
  private static Moment blind(double seconds) {
    return new Moment().heatedOn(ALLOWED).outdoors(1.999).blindFor(seconds, 0.5);
  }

  @Test
  void noReading_everythingIsOff() {
    for (OutputKind kind : OutputKind.values()) {
      assertThat(new Moment().withoutReading().request(NOTHING_KNOWN, kind))
          .isEqualTo("off HARDWARE_LIMIT NO_READING");
      assertThat(new Moment().request(NOTHING_KNOWN, kind)).isEqualTo("nothing");
    }
  }

  @Test
  void aRoomThatRests_isOff_andSaysWhetherSomethingLiesInIt() {
    assertThat(new Moment().rests().request(NOTHING_KNOWN, HEATER))
        .isEqualTo("off HARDWARE_LIMIT RESTS");
    assertThat(new Moment().rests().mindsColdBelow(10).request(NOTHING_KNOWN, HEATER))
        .isEqualTo("off HARDWARE_LIMIT ASKED_TO_REST");
  }

  @Test
  void blindInFrost_leavesHeaterAndFanToThePulses() {
    assertThat(blind(60).request(NOTHING_KNOWN, HEATER)).isEqualTo("nothing");
    assertThat(blind(60).request(NOTHING_KNOWN, CIRCULATION)).isEqualTo("nothing");
    assertThat(blind(60).request(NOTHING_KNOWN, EXHAUST))
        .isEqualTo("off HARDWARE_LIMIT NO_READING");
    assertThat(blind(60).request(NOTHING_KNOWN, COOLER)).isEqualTo("off HARDWARE_LIMIT NO_READING");
  }

  @Test
  void pulses_comeAtTheEndOfEachHalfHour() {
    assertThat(blind(1_349).request(BLIND_FROST, HEATER)).isEqualTo("off FROST HEATS_BLIND_LATER");
    assertThat(blind(1_349).request(BLIND_FROST, CIRCULATION))
        .isEqualTo("off ECONOMY HEATS_BLIND_LATER");
    assertThat(blind(1_350).request(BLIND_FROST, HEATER)).isEqualTo("on FROST HEATS_BLIND");
    assertThat(blind(1_350).request(BLIND_FROST, CIRCULATION)).isEqualTo("on FROST HEATS_BLIND");
    assertThat(blind(1_801).request(BLIND_FROST, HEATER)).startsWith("off");
  }

  @Test
  void pulses_endAfterTwelveHours() {
    assertThat(blind(43_199).request(BLIND_FROST, HEATER)).isEqualTo("on FROST HEATS_BLIND");
    assertThat(blind(43_200).request(BLIND_FROST, HEATER)).isEqualTo("nothing");
    assertThat(blind(43_200).request(NOTHING_KNOWN, HEATER)).startsWith("off HARDWARE_LIMIT");
  }

  @Test
  void theReasonTellsOutdoorsAndTheHoursLeft() {
    OutputRequests requests = new OutputRequests();
    blind(1_350).request(BLIND_FROST, HEATER, requests);
    assertThat(requests.of(HEATER).reason().first()).isEqualTo(1_999);
    assertThat(requests.of(HEATER).reason().second()).isEqualTo(11_625);
  }

  @Test
  void withoutLeave_withoutFrost_withReading_orAtRest_noPulses() {
    assertThat(blind(1_400).heatedOn(HeatTrust.USUAL).request(BLIND_FROST, HEATER))
        .isEqualTo("nothing");
    assertThat(blind(1_400).outdoors(2).request(BLIND_FROST, HEATER)).isEqualTo("nothing");
    assertThat(blind(1_400).rests().request(BLIND_FROST, HEATER)).isEqualTo("nothing");
    assertThat(new Moment().heatedOn(ALLOWED).blindFor(1_400, 0.5).request(BLIND_FROST, HEATER))
        .as("nothing known of outdoors")
        .isEqualTo("nothing");
    assertThat(new Moment().heatedOn(ALLOWED).outdoors(-5).request(BLIND_FROST, HEATER))
        .isEqualTo("nothing");
  }
}
