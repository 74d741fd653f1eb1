package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.daemon.BoardLock;

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
  void off_simulatedShed_hasNothingToSwitch() {
    CommandRun run = CommandRun.of("off", "--settings", "examples/shed.toml");

    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("there is nothing to switch off");
  }

  @Test
  void off_outputThatCannotBeReached_saysThatItMayStillBeOn() throws IOException {
    CommandRun run = CommandRun.of("off", "--settings", board(HEATER).toString());

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err())
        .contains("Output heater may still be on: The broker at tcp://127.0.0.1:1 cannot be");
  }

  @Test
  void off_whileTheDaemonRuns_isRefused_becauseItWouldNotLast() throws IOException {
    Path settings = board(HEATER);
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

  /** Nobody listens on port 1. */
  private static final String HEATER =
      """
      [broker]
      host = "127.0.0.1"
      port = 1

      [outputs.heater]
      room = "store"
      kind = "heater"
      driver = "mqtt"
      command_topic = "heater/command"
      state_topic = "heater/state"
      auto_off = "60s"
      """;

  private Path board(String more) throws IOException {
    return Files.writeString(
        folder.resolve("board.toml"),
        """
        [site]
        name = "Hollin Bank Farm"
        time_zone = "UTC"

        [control]

        [store]
        file = "rindward.db"

        [dashboard]

        [rooms.store]
        purpose = "storage"
        temperature = [10, 13]
        humidity = [50, 70]

        [probes.air]
        room = "store"
        driver = "hwmon"
        device = "no-such-sensor"
        accuracy = { temperature = 0.3, humidity = 3 }

        [probes.fruit]
        room = "store"
        place = "pulp"
        driver = "1-wire"
        serial = "28-0316a2791bff"

        """
            + more);
  }
}
