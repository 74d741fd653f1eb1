package rindward.controller.control;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import rindward.hardware.OutputKind;

/** What holds whatever the probes say. */
class ControlPropertyTest {

  /** What is so for some minutes: inside and outside, temperature and humidity. */
  record Spell(double airC, double airPct, double outdoorC, double outdoorPct, int minutes) {}

  @Property(tries = 300)
  void whateverTheProbesSay_noRuleOfSafetyIsBroken(@ForAll("spells") List<Spell> spells) {
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
    if (spell.airC() < 2) {
      assertThat(room.isOn(OutputKind.EXHAUST)).as("airing near freezing").isFalse();
      assertThat(room.isOn(OutputKind.HUMIDIFIER)).as("humidifying near freezing").isFalse();
    }
    if (spell.airC() < 9.9) {
      assertThat(room.isOn(OutputKind.EXHAUST)).as("airing while it chills").isFalse();
      assertThat(room.isOn(OutputKind.COOLER)).as("cooling while it chills").isFalse();
    }
    assertThat(room.memory().freshDue()).isBetween(0.0, 2.0);
  }

  @Property(tries = 50)
  void probesFallSilentAtAnyMoment_everythingIsOff(@ForAll("spells") List<Spell> spells) {
    RoomScript room = RoomScript.room();
    for (Spell spell : spells) {
      room.air(spell.airC(), spell.airPct()).after(Duration.ofMinutes(spell.minutes()));
      room.noProbe().tick();

      assertThat(room.rulings().values()).noneMatch(Ruling::on);
    }
  }

  @Provide
  Arbitrary<List<Spell>> spells() {
    Arbitrary<Double> airC = Arbitraries.doubles().between(-5, 35);
    Arbitrary<Double> outdoorC = Arbitraries.doubles().between(-25, 35);
    Arbitrary<Double> pct = Arbitraries.doubles().between(5, 100);
    return Combinators.combine(airC, pct, outdoorC, pct, Arbitraries.integers().between(1, 30))
        .as(Spell::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(8);
  }
}
