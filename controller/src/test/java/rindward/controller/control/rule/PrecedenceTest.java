package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.hardware.OutputKind.COOLER;
import static rindward.hardware.OutputKind.EXHAUST;
import static rindward.hardware.OutputKind.HEATER;

import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rindward.controller.control.AirflowInterlock;
import rindward.controller.control.MinimumTimes;
import rindward.controller.control.OutputDecision;
import rindward.controller.control.OutputRequests;
import rindward.controller.control.Precedence;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;
import rindward.controller.estimate.OutputState;
import rindward.controller.room.Contact;
import rindward.controller.room.HeatTrust;
import rindward.controller.room.Output;
import rindward.hardware.OutputKind;

/** Who gets an output when several want it, and what spares its contacts. */
class PrecedenceTest {
  private static final long SECOND = 1_000_000_000L;

  @Test
  void theOrderOfRights() {
    assertThat(Precedence.values())
        .containsExactly(
            Precedence.HARDWARE_LIMIT,
            Precedence.MANUAL_OFF,
            Precedence.FROST,
            Precedence.OVERHEATING,
            Precedence.CHILLING,
            Precedence.CONDENSATION,
            Precedence.MANUAL_ON,
            Precedence.DAMP,
            Precedence.DRY,
            Precedence.MINIMUM_TIMES,
            Precedence.ECONOMY);
  }

  @Test
  void theStrongerRightWins_whoeverSpeaksFirst() {
    for (Precedence stronger : Precedence.values()) {
      for (Precedence weaker : Precedence.values()) {
        if (stronger.compareTo(weaker) < 0) {
          assertThat(first(stronger, true, weaker, false)).isTrue();
          assertThat(first(weaker, false, stronger, true)).isTrue();
          assertThat(first(stronger, false, weaker, true)).isFalse();
          assertThat(first(weaker, true, stronger, false)).isFalse();
        }
      }
    }
  }

  @Test
  void ofTwoEqualRights_offWins() {
    for (Precedence right : Precedence.values()) {
      assertThat(first(right, true, right, false)).isFalse();
      assertThat(first(right, false, right, true)).isFalse();
    }
  }

  private static boolean first(Precedence one, boolean oneOn, Precedence other, boolean otherOn) {
    OutputRequests requests = new OutputRequests();
    for (boolean isFirst : new boolean[] {true, false}) {
      Precedence right = isFirst ? one : other;
      if (isFirst ? oneOn : otherOn) {
        requests.on(HEATER, right, Reason.of(ReasonCode.SHARES_OUT));
      } else {
        requests.off(HEATER, right, Reason.of(ReasonCode.NOTHING_TO_SHARE));
      }
    }
    return requests.of(HEATER).on();
  }

  @Test
  void contactsAreSparedForTheirMinimumTime_andNotASecondLonger() {
    assertThat(spared(HEATER, true, 59, false, Precedence.ECONOMY))
        .isEqualTo(
            new OutputDecision(
                true, Precedence.MINIMUM_TIMES, new Reason(ReasonCode.ON_FOR_NOW, 2_000, 0)));
    assertThat(spared(HEATER, true, 60, false, Precedence.ECONOMY).on()).isFalse();
    assertThat(spared(HEATER, false, 119, true, Precedence.ECONOMY))
        .isEqualTo(
            new OutputDecision(
                false, Precedence.MINIMUM_TIMES, new Reason(ReasonCode.OFF_FOR_NOW, 2_000, 0)));
    assertThat(spared(HEATER, false, 120, true, Precedence.ECONOMY).on()).isTrue();
    assertThat(spared(HEATER, true, 5, true, Precedence.ECONOMY).right())
        .isEqualTo(Precedence.ECONOMY);
  }

  @Test
  void frostHeatAndPeopleSpareNoContacts() {
    for (Precedence right : Precedence.values()) {
      boolean waits = right.compareTo(Precedence.OVERHEATING) > 0;
      assertThat(spared(HEATER, true, 5, false, right).on()).as("%s", right).isEqualTo(waits);
      assertThat(spared(HEATER, false, 5, true, right).on()).as("%s", right).isEqualTo(!waits);
    }
  }

  @Test
  void coldAirIsCutShortForTheStock_andLetInNoSooner() {
    assertThat(spared(EXHAUST, true, 5, false, Precedence.CHILLING).on()).isFalse();
    assertThat(spared(EXHAUST, true, 5, false, Precedence.CONDENSATION).on()).isTrue();
    assertThat(spared(EXHAUST, false, 5, true, Precedence.CHILLING).on()).isFalse();
    assertThat(spared(HEATER, true, 5, false, Precedence.CHILLING).on()).isTrue();
  }

  @Test
  void aCompressorsPauseIsKeptWhateverHappens() {
    assertThat(spared(COOLER, false, 5, true, Precedence.HARDWARE_LIMIT).on()).isFalse();
    assertThat(spared(COOLER, false, 5, true, Precedence.OVERHEATING).on()).isFalse();
    assertThat(spared(COOLER, true, 5, false, Precedence.FROST).on()).isFalse();
  }

  /** Spared for a minute while on and for two while off. */
  private static OutputDecision spared(
      OutputKind kind, boolean isOn, long seconds, boolean requested, Precedence right) {
    Output output =
        new Output(
            kind.word(), kind, Contact.RELAY, Duration.ofMinutes(1), Duration.ofMinutes(2), 0, 0);
    return MinimumTimes.apply(
        output,
        new OutputState(isOn, 1_000 * SECOND, Double.NaN, Double.NaN),
        new OutputDecision(requested, right, Reason.of(ReasonCode.COOLS)),
        (1_000 + seconds) * SECOND);
  }

  @Test
  void noHeatWithoutTheFanThatCarriesIt() {
    assertThat(heats(HeatTrust.USUAL, false)).isFalse();
    assertThat(heats(HeatTrust.USUAL, true)).isTrue();
    assertThat(heats(new HeatTrust(false, false), false)).isTrue();
  }

  private static boolean heats(HeatTrust trust, boolean fanRuns) {
    Map<OutputKind, OutputDecision> rulings = new EnumMap<>(OutputKind.class);
    rulings.put(
        HEATER, new OutputDecision(true, Precedence.FROST, Reason.of(ReasonCode.NEAR_FREEZING)));
    rulings.put(
        OutputKind.CIRCULATION,
        new OutputDecision(fanRuns, Precedence.MANUAL_OFF, Reason.of(ReasonCode.OFF_BY_HAND)));
    AirflowInterlock.apply(new Moment().heatedOn(trust).input().room(), rulings);
    return rulings.get(HEATER).on();
  }
}
