package rindward.controller.control.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.control.ReasonCode;
import rindward.hardware.OutputKind;

/** What holds whatever the probes say. */
class RuleBasedControllerPropertyTest {

  /** What is so for some minutes: inside and outside, temperature and humidity. */
  record Spell(double airC, double airPct, double outdoorC, double outdoorPct, int minutes) {}

  @Seeded(cases = 300)
  void whateverTheProbesSay_noRuleOfSafetyIsBroken(Any any) {
    List<Spell> spells = spells(any);
    RoomScript room = RoomScript.room().stockMindsColdBelow(10);
    for (Spell spell : spells) {
      room.air(spell.airC(), spell.airPct()).outdoors(spell.outdoorC(), spell.outdoorPct());
      for (int tick = 0; tick < spell.minutes() * 6; tick++) {
        room.tick();
        check(room, spell);
      }
    }
  }

  private static void check(RoomScript room, Spell spell) {
    for (OutputKind kind : OutputKind.values()) {
      assertThat(room.why(kind)).doesNotContain("NaN").doesNotContain("-536870").endsWith(".");
    }
    if (spell.airC() > 18.01) {
      assertThat(room.isOn(OutputKind.HEATER)).as("heat far above the range").isFalse();
    }
    // What is entered is rounded to hundredths, so that 1.996 is 2.
    if (spell.airC() < 1.99) {
      assertThat(room.isOn(OutputKind.EXHAUST)).as("airing near freezing").isFalse();
      assertThat(room.isOn(OutputKind.HUMIDIFIER)).as("humidifying near freezing").isFalse();
    }
    if (spell.airC() < 9.9) {
      assertThat(room.isOn(OutputKind.EXHAUST)).as("airing while it chills").isFalse();
      assertThat(room.isOn(OutputKind.COOLER)).as("cooling while it chills").isFalse();
    }
    assertThat(room.memory().freshDue()).isBetween(0.0, 2.0);
  }

  @Seeded(cases = 50)
  void probesFallSilentAtAnyMoment_everythingIsOff_butAFanThatWasOn(Any any) {
    List<Spell> spells = spells(any);
    RoomScript room = RoomScript.room();
    for (Spell spell : spells) {
      room.air(spell.airC(), spell.airPct()).after(Duration.ofMinutes(spell.minutes()));
      boolean wasOn = room.isOn(OutputKind.CIRCULATION);
      room.noProbe().tick();

      room.rulings()
          .forEach(
              (kind, ruling) ->
                  assertThat(ruling.on() && !(wasOn && kind == OutputKind.CIRCULATION)).isFalse());
      assertThat(room.after(Duration.ofMinutes(6)).rulings().values())
          .allMatch(ruling -> !ruling.on() || ruling.reason().because() == ReasonCode.MOVES_BLIND);
    }
  }

  private static List<Spell> spells(Any any) {
    return any.list(
        1,
        8,
        () ->
            new Spell(
                any.doubleBetween(-5, 35),
                any.doubleBetween(5, 100),
                any.doubleBetween(-25, 35),
                any.doubleBetween(5, 100),
                any.intBetween(1, 30)));
  }
}
