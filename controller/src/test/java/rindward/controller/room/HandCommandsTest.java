package rindward.controller.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;
import org.junit.jupiter.api.Test;
import rindward.controller.journal.Entry;
import rindward.controller.journal.LetRun;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.Speaker;
import rindward.controller.journal.SwitchedByHand;
import rindward.hardware.OutputKind;

/**
 * What of switching by hand counts, whatever stands in the journal: on only from whoever may, at
 * once, and with an end; off always.
 */
class HandCommandsTest {
  private static final Instant NOW = Instant.parse("2026-12-10T18:00:00Z");
  private static final Instant END = NOW.plusSeconds(600);
  private static final BiPredicate<String, Speaker> WREN_HELPS =
      (by, least) -> by.equals("Wren") && least.compareTo(Speaker.HELPER) <= 0;

  private final List<Recorded> said = new ArrayList<>();

  @Test
  void onThatIsHeardAtOnce_holdsUntilItsEnd() {
    say("Wren", heater(true, END, NOW), NOW);

    assertThat(heard(NOW).of("store", NOW)).containsExactly(command(true, END, "Wren"));
    assertThat(heard(NOW).of("store", END)).isEmpty();
    assertThat(heard(NOW).of("barn", NOW)).isEmpty();
  }

  @Test
  void onThatIsHeardTooLate_isVoid_toTheSecond() {
    say("Wren", heater(true, END, NOW), NOW);

    assertThat(heard(NOW.plusSeconds(10)).of("store", NOW)).hasSize(1);
    assertThat(heard(NOW.plusSeconds(10).plusMillis(1)).of("store", NOW)).isEmpty();
  }

  @Test
  void onThatPretendsToBeNew_isVoid() {
    say("Wren", heater(true, END, NOW.minusSeconds(11)), NOW);
    say("Wren", heater(true, END, NOW), NOW.minusSeconds(11));
    say("Wren", heater(true, END, NOW.plusSeconds(11)), NOW);
    say("Wren", heater(true, END, NOW), NOW.plusSeconds(11));

    assertThat(heard(NOW).of("store", NOW)).isEmpty();
  }

  @Test
  void onFromWhoeverMayNot_isVoid() {
    say("Ash", heater(true, END, NOW), NOW);

    assertThat(heard(NOW).of("store", NOW)).isEmpty();
  }

  @Test
  void onWithoutAnEndInADay_isVoid_butOffIsCutShort() {
    Instant farAway = NOW.plus(Duration.ofDays(4_000));
    say("Wren", heater(true, farAway, NOW), NOW);
    assertThat(heard(NOW).of("store", NOW)).isEmpty();

    say("Wren", heater(false, farAway, NOW), NOW);
    assertThat(heard(NOW).of("store", NOW))
        .containsExactly(command(false, NOW.plus(Duration.ofDays(1)), "Wren"));
  }

  @Test
  void offCounts_whoeverSaysItAndHoweverLate() {
    say("Wren", heater(true, END, NOW), NOW);
    say("nobody", heater(false, END, NOW.minusSeconds(500)), NOW.minusSeconds(400));

    assertThat(heard(NOW).of("store", NOW)).containsExactly(command(false, END, "nobody"));
  }

  @Test
  void letRun_endsWhatWasSaidBefore_butOnlyFromWhoeverMayAndAtOnce() {
    say("Wren", heater(false, END, NOW), NOW);
    say("Ash", new LetRun("store", OutputKind.HEATER, NOW), NOW);
    say("Wren", new LetRun("store", OutputKind.HEATER, NOW.minusSeconds(30)), NOW);
    assertThat(heard(NOW).of("store", NOW)).hasSize(1);

    say("Wren", new LetRun("store", OutputKind.HEATER, NOW), NOW);
    assertThat(heard(NOW).of("store", NOW)).isEmpty();
  }

  @Test
  void aRestart_keepsOffUntilItsEnd_andStartsNothing() {
    say("Wren", heater(false, END, NOW), NOW);
    say("Wren", new SwitchedByHand("store", OutputKind.CIRCULATION, true, END, NOW), NOW);

    assertThat(HandCommands.atStart(said, WREN_HELPS, NOW.plusSeconds(1)).of("store", NOW))
        .containsExactly(command(false, END, "Wren"));
    assertThat(HandCommands.atStart(said, WREN_HELPS, END)).isEqualTo(HandCommands.NONE);
  }

  @Test
  void aRestart_keepsNoOffThatWasTakenBack() {
    say("Wren", heater(false, END, NOW), NOW);
    say("Wren", new LetRun("store", OutputKind.HEATER, NOW.plusSeconds(5)), NOW.plusSeconds(5));

    assertThat(HandCommands.atStart(said, WREN_HELPS, NOW.plusSeconds(60)).of("store", NOW))
        .isEmpty();
  }

  @Test
  void aRoomOfWhichANewerVersionSpoke_keepsOnlyItsOffs() {
    HandCommands both =
        HandCommands.of(
            Map.of(
                "store",
                List.of(
                    command(false, END, "Wren"),
                    new ManualCommand(OutputKind.CIRCULATION, true, END, "Wren"))));

    assertThat(both.withoutOn("store").of("store", NOW))
        .containsExactly(command(false, END, "Wren"));
  }

  private HandCommands heard(Instant now) {
    return HandCommands.NONE.after(said, WREN_HELPS, now);
  }

  private void say(String by, Entry entry, Instant recordedAt) {
    said.add(new Recorded(said.size() + 1, recordedAt, by, entry));
  }

  private static SwitchedByHand heater(boolean on, Instant until, Instant at) {
    return new SwitchedByHand("store", OutputKind.HEATER, on, until, at);
  }

  private static ManualCommand command(boolean on, Instant until, String by) {
    return new ManualCommand(OutputKind.HEATER, on, until, by);
  }
}
