package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Alarms;
import rindward.controller.command.CommandRun;
import rindward.controller.control.OutputDecision;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.HostMachine;
import rindward.controller.daemon.Time;
import rindward.controller.journal.OutputTried;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.settings.StartingPoint;
import rindward.controller.settings.TrialNotes;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/**
 * A start goes on with what was accepted, and switches nothing that may be wired otherwise by now.
 */
class ShedStartTest {
  private static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private Time.Stepped time;
  private FakeMachine machine;
  private Path file;
  private Set<AlarmId> lasting = Set.of();

  @BeforeEach
  void coldRoomWhoseHeaterWasTried() throws IOException {
    time = new Time.Stepped(AT);
    machine = new FakeMachine(folder.resolve("sys"), time);
    machine.airSays(6_500, 63_000);
    BoardFile board = BoardFile.in(folder, BoardFile.AIR, BoardFile.heater(17));
    file = board.path();
    Settings settings = board.settings();
    String place = settings.outputs().get(0).driver().place();
    try (Database database = new Database(settings.store())) {
      new EntryService(new Journal(database), settings.crops())
          .say(
              new OutputTried("store", "heater", place, AT),
              "Wren",
              "r1",
              OptionalLong.empty(),
              AT);
    }
  }

  /** Whoever may write the record may say of any output that it was tried. */
  @Test
  void aTrialThatControlHasNotNoted_countsForNothing() throws Exception {
    Files.delete(folder.resolve("rindward.db"));
    assertThat(isHeatedAfterAStart()).isFalse();
    OutputTried forged =
        new OutputTried("store", "heater", settings().outputs().get(0).driver().place(), AT);
    try (Database database = new Database(settings().store())) {
      new EntryService(new Journal(database), settings().crops())
          .say(forged, "Wren", "r2", OptionalLong.empty(), AT);
    }

    assertThat(isHeatedAfterAStart()).isFalse();

    TrialNotes.of(file).add(List.of(forged));
    assertThat(isHeatedAfterAStart()).isTrue();
  }

  @Test
  void aTrialFromBeforeThereWereNotes_isBelievedOnce() throws Exception {
    assertThat(isHeatedAfterAStart()).isTrue();
    assertThat(TrialNotes.of(file).has(settings().outputs().get(0))).isTrue();
  }

  private Settings settings() throws IOException {
    return SettingsReader.read(file, new Problems()).orElseThrow();
  }

  @Test
  void goodFile_isAccepted_byThePersonWhoStarts_andForNobodyElseToRead() throws Exception {
    assertThat(isHeatedAfterAStart()).isTrue();

    Accepted accepted = Accepted.read(file).orElseThrow();
    assertThat(accepted)
        .isEqualTo(new Accepted(Files.readString(file), AT, System.getProperty("user.name")));
    for (Path made :
        new Path[] {
          Accepted.placeOf(file), folder.resolve("rindward.db"), folder.resolve("rindward.db.lock")
        }) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(made)))
          .as("%s", made)
          .isEqualTo("rw-------");
    }
  }

  @Test
  void brokenElsewhere_goesOnWithWhatWasAccepted_andSaysWhichLine() throws Exception {
    isHeatedAfterAStart();
    replace("humidity = [50, 70]", "humidity = [50, 70");

    assertThat(isHeatedAfterAStart()).isTrue();
    assertThat(alarm(AlarmKind.SETTINGS_PASSED_OVER)).isPresent();
    assertThat(alarm(AlarmKind.SETTINGS_BROKEN)).isEmpty();
  }

  @Test
  void brokenInAnOutput_observesWithEverythingOff_andWakes() throws Exception {
    isHeatedAfterAStart();
    replace("line = 17", "line = 17 18");
    int before = machine.switched().size();

    assertThat(isHeatedAfterAStart()).isFalse();

    assertThat(machine.switched().subList(before, machine.switched().size()))
        .contains("17 off")
        .doesNotContain("17 on");
    int line = Files.readAllLines(file).indexOf("line = 17 18") + 1;
    assertThat(alarm(AlarmKind.SETTINGS_BROKEN)).contains("board.toml:" + line);
  }

  @Test
  void brokenElsewhere_withAnotherOutputBesides_observesToo() throws Exception {
    isHeatedAfterAStart();
    replace("humidity = [50, 70]", "humidity = [50, 70");
    Files.writeString(file, Files.readString(file) + "\n" + BoardFile.fan(22));

    assertThat(isHeatedAfterAStart()).isFalse();
    assertThat(machine.switched()).doesNotContain("22 on", "22 off");
  }

  @Test
  void brokenFile_andNothingAccepted_opensNoOutput() throws Exception {
    replace("humidity = [50, 70]", "humidity = [50, 70");

    Problems problems = new Problems();
    assertThat(StartingPoint.of(file, problems)).isEmpty();
    assertThat(problems.list()).isNotEmpty();
    assertThat(CommandRun.of("run", "--settings", file.toString()).exit()).isEqualTo(2);
  }

  @Test
  void missingFile_afterAStart_observes() throws Exception {
    isHeatedAfterAStart();
    Files.delete(file);

    assertThat(isHeatedAfterAStart()).isFalse();
    assertThat(alarm(AlarmKind.SETTINGS_BROKEN)).contains("board.toml:1");
  }

  @Test
  void mendedFile_isAcceptedAnew_andTheAlarmGoes() throws Exception {
    isHeatedAfterAStart();
    replace("humidity = [50, 70]", "humidity = [50, 70");
    isHeatedAfterAStart();
    replace("humidity = [50, 70", "humidity = [50, 72]");
    isHeatedAfterAStart();

    assertThat(Accepted.read(file).orElseThrow().text()).contains("[50, 72]");
    assertThat(alarm(AlarmKind.SETTINGS_PASSED_OVER)).isEmpty();
  }

  @Test
  void outputThatTheNewFileNamesNoLonger_isSwitchedOffAtItsFirstStart() throws Exception {
    isHeatedAfterAStart();
    BoardFile.in(folder, BoardFile.AIR, BoardFile.fan(22));
    int before = machine.switched().size();

    isHeatedAfterAStart();

    assertThat(machine.switched().get(before)).isEqualTo("17 off");
  }

  @Test
  void sameFileStartedAgain_keepsSinceWhenItIsAccepted() throws Exception {
    isHeatedAfterAStart();
    Instant since = Accepted.read(file).orElseThrow().at();
    isHeatedAfterAStart();

    assertThat(time.now().at()).isAfter(since);
    assertThat(Accepted.read(file).orElseThrow().at()).isEqualTo(since);
  }

  private boolean isHeatedAfterAStart() throws Exception {
    StartingPoint start = StartingPoint.of(file, new Problems()).orElseThrow();
    ShedStart shed = new ShedStart(file, start, time, () -> machine);
    try (Daemon daemon = shed.daemon(HostMachine.none())) {
      for (int i = 0; i < 30; i++) {
        daemon.step();
        time.advance(Duration.ofSeconds(10));
      }
      Alarms alarms = daemon.latest().judgement().alarms();
      lasting =
          alarms.all().keySet().stream()
              .filter(id -> alarms.alarm(id).condition().active())
              .collect(Collectors.toSet());
      return daemon.latest().rooms().get(0).rulings().values().stream()
          .anyMatch(OutputDecision::on);
    } finally {
      shed.letGo();
    }
  }

  private Optional<String> alarm(AlarmKind kind) {
    return lasting.stream().filter(id -> id.kind() == kind).map(AlarmId::thing).findFirst();
  }

  private void replace(String what, String by) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(what);
    Files.writeString(file, text.replace(what, by));
  }
}
