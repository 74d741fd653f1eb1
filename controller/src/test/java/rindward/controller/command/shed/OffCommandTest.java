package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rindward.controller.command.CommandRun;
import rindward.controller.daemon.BoardLock;
import rindward.controller.daemon.FakeMachine;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Accepted;
import rindward.controller.settings.BoardFile;

/** {@code off} switches off what is really wired, whatever has become of the settings file. */
class OffCommandTest {
  private static final Instant AT = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private FakeMachine machine;

  @BeforeEach
  void machine() {
    machine = new FakeMachine(folder, new Time.Stepped(AT));
  }

  @Test
  void slipOfThePenInAnotherTable_costsNothing() throws IOException {
    Path file = board(BoardFile.heater(17), BoardFile.fan(22));
    replace(file, "temperature = [10, 13]", "temperature = [10, 13");

    CommandRun run = off(file);

    assertThat(machine.switched()).contains("17 off", "22 off").doesNotContain("17 on", "22 on");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("Output heater is off (GPIO 17, on when high).");
  }

  @Test
  void slipOfThePenInAnOutput_costsThatOneOnly_andIsSaid() throws IOException {
    Path file = board(BoardFile.heater(17), BoardFile.fan(22));
    replace(file, "line = 22", "line = 2 2");

    CommandRun run = off(file);

    assertThat(machine.switched()).contains("17 off");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .containsPattern("Lines \\d+ to \\d+ of board.toml cannot be read as an output")
        .hasLineCount(1);
  }

  @Test
  void outputLastAccepted_isSwitchedOff_whenTheFileIsBroken_changedOrGone() throws IOException {
    Path file = accepted(board(BoardFile.heater(17)));
    for (String now : new String[] {"this is no TOML", BoardFile.fan(22), ""}) {
      Files.writeString(file, now);
      assertThat(off(file).out()).contains("Output heater is off (GPIO 17, on when high).");
    }
    Files.delete(file);

    CommandRun run = off(file);

    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("Output heater is off (GPIO 17, on when high).");
    assertThat(machine.switched()).contains("22 off").doesNotContain("17 on", "22 on");
  }

  @Test
  void newerFileThatWasNeverStarted_isSwitchedOffToo() throws IOException {
    Path file = accepted(board(BoardFile.heater(17)));
    board(BoardFile.heater(18), BoardFile.fan(22));

    assertThat(off(file).exit()).isZero();

    assertThat(machine.switched()).contains("17 off", "18 off", "22 off");
  }

  @Test
  void samePinWithAnotherPolarity_isSwitchedOffAsAccepted_andSaid() throws IOException {
    Path file = accepted(board(BoardFile.heater(17)));
    replace(file, "active = \"high\"", "active = \"low\"");

    CommandRun run = off(file);

    assertThat(run.out()).contains("Output heater is off (GPIO 17, on when high).").hasLineCount(1);
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .contains("Output heater is now said to be GPIO 17, on when low, but it was last accepted")
        .hasLineCount(1);
  }

  @Test
  void daemonThatRunsByWhatWasAccepted_isNotWorkedAgainst_evenWithABrokenFile() throws IOException {
    Path file = accepted(board(BoardFile.heater(17)));
    Files.writeString(file, "this is no TOML");
    try (BoardLock daemon = BoardLock.take(folder.resolve("rindward.db")).orElseThrow()) {
      CommandRun run = off(file);

      assertThat(daemon).isNotNull();
      assertThat(run.exit()).isEqualTo(1);
      assertThat(run.err()).contains("stop it first");
      assertThat(machine.switched()).isEmpty();
    }
  }

  @Test
  void noFile_andNothingAccepted_isSaid() {
    CommandRun run = off(folder.resolve("gone.toml"));

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("There is no file ").contains("Nothing is known");
  }

  @Test
  void acceptedFileThatSomebodyHasSpoilt_isSaid_andTheSettingsFileGoneBy() throws IOException {
    Path file = accepted(board(BoardFile.heater(17)));
    Files.writeString(Accepted.placeOf(file), "nonsense");

    CommandRun run = off(file);

    assertThat(run.err()).contains("Only the settings file is gone by").hasLineCount(1);
    assertThat(run.out()).contains("Output heater is off");
  }

  private CommandRun off(Path file) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int exit =
        new CommandLine(new OffCommand(() -> machine))
            .setOut(new PrintWriter(out))
            .setErr(new PrintWriter(err))
            .execute("--settings", file.toString());
    return new CommandRun(exit, out.toString(), err.toString());
  }

  private static Path accepted(Path file) throws IOException {
    new Accepted(Files.readString(file), AT, "Wren").keep(file);
    return file;
  }

  private static void replace(Path file, String what, String by) throws IOException {
    String text = Files.readString(file);
    assertThat(text).contains(what);
    Files.writeString(file, text.replace(what, by));
  }

  private Path board(String... outputs) throws IOException {
    return BoardFile.in(folder, BoardFile.AIR_ON_1_WIRE, String.join("\n", outputs)).path();
  }
}
