package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.shed.OutputTrial;
import rindward.controller.command.shed.TriedParts;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.RealBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.ProbeCalibrated;
import rindward.controller.journal.Recorded;
import rindward.controller.room.Room;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.Settings;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;
import rindward.controller.store.LastingWords;
import rindward.hardware.wired.Offset;

/** Nothing is switched before somebody stood beside it; what was tried is known by its wiring. */
class CommissioningTest {
  private static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private final Time time = new Time.Stepped(AT);
  private FakeMachine machine;

  @BeforeEach
  void machine() {
    machine = new FakeMachine(folder, time);
  }

  @Test
  void trial_withAPlainYes_runsForFiveSecondsAndEndsOff() throws IOException {
    List<Integer> waited = new ArrayList<>();
    Settings settings = settings(17);
    OutputTrial trial = new OutputTrial(board(settings), waited::add, question -> true, () -> 0);

    assertThat(trial.of(settings.outputs().get(0), List.of())).isTrue();

    assertThat(waited.stream().mapToInt(Integer::intValue).sum()).isEqualTo(5_000);
    assertThat(machine.switched()).startsWith("17 off", "17 on").endsWith("17 off");
  }

  @Test
  void trial_withoutAYes_switchesNothing() throws IOException {
    Settings settings = settings(17);

    assertThat(trial(settings, question -> false).of(settings.outputs().get(0), List.of()))
        .isFalse();

    assertThat(machine.switched()).isEmpty();
  }

  @Test
  void trial_wrongThingRan_isNotTried() throws IOException {
    Settings settings = settings(17);

    assertThat(
            trial(settings, q -> q.startsWith("Switch")).of(settings.outputs().get(0), List.of()))
        .isFalse();
  }

  @Test
  void trial_toldToStop_endsOff() throws IOException {
    Settings settings = settings(17);
    OutputTrial trial =
        new OutputTrial(
            board(settings),
            millis -> {
              throw new java.io.InterruptedIOException("told to stop");
            },
            question -> true,
            () -> 0);

    assertThatThrownBy(() -> trial.of(settings.outputs().get(0), List.of()))
        .hasMessage("told to stop");
    assertThat(machine.switched()).contains("17 on").endsWith("17 off");
  }

  @Test
  void room_isRunOnceItsOutputsWereTried_asTheyAreWiredNow() throws IOException {
    assertThat(TriedParts.in(settings(17)).rooms()).allMatch(Room::observeOnly);

    Settings settings = settings(17);
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      String place = settings.outputs().get(0).driver().place();
      door.say(
          new OutputTried("store", "heater", place, AT), "Wren", "r1", OptionalLong.empty(), AT);
    }

    assertThat(TriedParts.in(settings).rooms()).noneMatch(Room::observeOnly);
    assertThat(TriedParts.in(settings(22)).rooms()).allMatch(Room::observeOnly);
  }

  /** A database that is damaged or begun anew in January must not turn the heat off for good. */
  @Test
  void whatWasTried_staysTried_whateverBecomesOfTheRecord() throws IOException {
    Settings settings = settings(17);
    Path file = settings.store().resolveSibling("words.toml");
    String place = settings.outputs().get(0).driver().place();
    OutputTried tried = new OutputTried("store", "heater", place, AT);
    LastingWords.beside(file)
        .hear(List.of(new Recorded(1, AT, "Wren", tried)), (by, least) -> true, AT);
    Files.writeString(settings.store(), "no database");

    assertThat(TriedParts.in(settings).rooms()).allMatch(Room::observeOnly);
    assertThat(TriedParts.in(settings, null, LastingWords.beside(file)).rooms())
        .noneMatch(Room::observeOnly);
    assertThat(TriedParts.in(settings(22), null, LastingWords.beside(file)).rooms())
        .allMatch(Room::observeOnly);
  }

  @Test
  void heartbeat_isTriedByItself_beatsWhileAnOutputIsTried_andKeepsRoomsObservedUntilThen()
      throws IOException {
    Settings settings = settings(17, "[heartbeat]\nline = 24\n");

    assertThat(trial(settings, q -> true).ofHeartbeat(settings.safety().asOutput().orElseThrow()))
        .isPresent();
    assertThat(machine.switched()).containsSubsequence("24 on", "24 off", "24 on", "24 off");
    assertThat(trial(settings, q -> true).of(settings.outputs().get(0), List.of())).isTrue();
    assertThat(machine.switched()).containsSubsequence("24 on", "24 off", "17 on", "17 off");
    assertThat(settings.commissioned(o -> o.name().equals("heater")).rooms())
        .allMatch(Room::observeOnly);
    assertThat(settings.commissioned(o -> true).rooms()).noneMatch(Room::observeOnly);
  }

  @Test
  void heartbeatRelayThatDoesNotDropOut_isNotTried() throws IOException {
    Settings settings = settings(17, "[heartbeat]\nline = 24\n");

    assertThat(
            trial(settings, q -> !q.contains("open again"))
                .ofHeartbeat(settings.safety().asOutput().orElseThrow()))
        .isEmpty();
  }

  @Test
  void probe_isSetRightByItsLastComparison_untilItHangsOnAnotherPart() throws IOException {
    Settings settings = settings(17);
    String place = settings.probes().get(0).driver().place();
    try (Database database = new Database(settings.store())) {
      EntryService door = new EntryService(new Journal(database), settings.crops());
      for (int off : new int[] {-300, 200}) {
        door.say(
            new ProbeCalibrated("air", place, off, 0, 1_000_000, "a thermometer", AT),
            "Wren",
            "r" + off,
            OptionalLong.empty(),
            AT);
      }
    }

    assertThat(TriedParts.in(settings).probes().get(0).offset()).isEqualTo(new Offset(200, 0));
    Settings moved =
        BoardFile.in(folder, BoardFile.AIR_ON_1_WIRE.replace("2791bff", "2791aaa")).settings();
    assertThat(TriedParts.in(moved).probes().get(0).offset()).isEqualTo(Offset.NONE);
  }

  @Test
  void commission_simulatedShed_hasNothingToTry() {
    CommandRun run = CommandRun.of("commission", "--settings", "examples/shed.toml");

    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("there is nothing to try");
  }

  private OutputTrial trial(Settings settings, Predicate<String> asks) {
    return new OutputTrial(board(settings), millis -> {}, asks, () -> 0);
  }

  private RealBoard board(Settings settings) {
    return new RealBoard(settings, () -> machine);
  }

  private Settings settings(int line) throws IOException {
    return settings(line, "");
  }

  private Settings settings(int line, String more) throws IOException {
    return BoardFile.in(folder, BoardFile.AIR_ON_1_WIRE, BoardFile.heater(line), more).settings();
  }
}
