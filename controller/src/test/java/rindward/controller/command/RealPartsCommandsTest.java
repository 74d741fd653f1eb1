package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.daemon.BoardLock;
import rindward.controller.settings.BoardFile;

/** The commands that put hands on real parts, on a machine that has none. */
class RealPartsCommandsTest {
  @TempDir private Path folder;

  @Test
  void checkLive_onTheSimulatedShed_printsEachProbeWithItsDewPoint() {
    CommandRun run = CommandRun.of("check", "--live", "--settings", "examples/shed.toml");

    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .containsPattern("probe  curing-air +[0-9.-]+ C, [0-9.]+ %, dew point [0-9.-]+ C, just now")
        .containsPattern("probe  outdoor +[0-9.-]+ C");
  }

  @Test
  void checkLive_partThatIsNotThere_saysWhatIsWrong_andIsNotWell() throws IOException {
    CommandRun run = CommandRun.of("check", "--live", "--settings", board("").toString());

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out())
        .contains("no value: probe air (hwmon no-such-sensor): device was 'no-such-sensor' but it")
        .contains("no value: probe fruit (1-Wire 28-0316a2791bff): it is not on the bus");
  }

  @Test
  void checkLive_whileTheDaemonReads_doesNotDisturbIt() throws IOException {
    Path settings = board("");
    try (BoardLock daemon = BoardLock.take(folder.resolve("rindward.db")).orElseThrow()) {
      CommandRun run = CommandRun.of("check", "--live", "--settings", settings.toString());

      assertThat(daemon).isNotNull();
      assertThat(run.exit()).isEqualTo(1);
      assertThat(run.err()).contains("The daemon reads these probes now").hasLineCount(1);
    }
  }

  @Test
  void checkStrict_onAnyWarning_isNotWell() throws IOException {
    String settings = BoardFile.in(folder, BoardFile.AIR, BoardFile.heater(17)).path().toString();

    CommandRun kind = CommandRun.of("check", "--settings", settings);
    CommandRun strict = CommandRun.of("check", "--strict", "--settings", settings);

    assertThat(kind.exit()).isZero();
    assertThat(strict.exit()).isEqualTo(1);
    assertThat(strict.out())
        .isEqualTo(kind.out())
        .contains("Warning: heartbeat is missing but a real heater must end");
  }

  @Test
  void checkStrict_withoutWarnings_isFine() {
    CommandRun run = CommandRun.of("check", "--strict", "--settings", "examples/shed.toml");

    assertThat(run.exit()).isZero();
    assertThat(run.out()).doesNotContain("Warning");
  }

  @Test
  void off_simulatedShed_hasNothingToSwitch() {
    CommandRun run = CommandRun.of("off", "--settings", "examples/shed.toml");

    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("there is nothing to switch off");
  }

  @Test
  void off_outputThatCannotBeReached_saysThatItMayStillBeOn() throws IOException {
    CommandRun run =
        CommandRun.of("off", "--settings", board(BoardFile.HEATER_ON_NETWORK).toString());

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .contains("Output heater may still be on: The broker at tcp://127.0.0.1:1 cannot be");
  }

  @Test
  void off_whileTheDaemonRuns_isRefused_becauseItWouldNotLast() throws IOException {
    Path settings = board(BoardFile.HEATER_ON_NETWORK);
    try (BoardLock daemon = BoardLock.take(folder.resolve("rindward.db")).orElseThrow()) {
      CommandRun run = CommandRun.of("off", "--settings", settings.toString());

      assertThat(daemon).isNotNull();
      assertThat(run.exit()).isEqualTo(1);
      assertThat(run.err()).contains("stop it first").hasLineCount(1);
    }
  }

  @Test
  void run_whileAnotherRuns_isRefused() throws IOException {
    Path settings = board("");
    try (BoardLock other = BoardLock.take(folder.resolve("rindward.db")).orElseThrow()) {
      CommandRun run = CommandRun.of("run", "--settings", settings.toString());

      assertThat(other).isNotNull();
      assertThat(run.exit()).isEqualTo(1);
      assertThat(run.err()).contains("Another rindward has its hands on this shed");
    }
  }

  private Path board(String more) throws IOException {
    String air = BoardFile.AIR.replace("sht3x", "no-such-sensor");
    return BoardFile.in(folder, air, BoardFile.FRUIT, more).path();
  }
}
