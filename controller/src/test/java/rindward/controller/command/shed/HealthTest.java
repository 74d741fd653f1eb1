package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.CommandRun;
import rindward.controller.command.base.JsonOutput;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.link.ControlReport;
import rindward.controller.settings.Problems;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;

/** What control tells of itself, as somebody reads it who has just upgraded it. */
class HealthTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private Path file;
  private SimulatedRun shed;

  @BeforeEach
  void anHour() throws Exception {
    file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")));
    shed =
        new SimulatedRun(
            SettingsReader.read(file, new Problems()).orElseThrow(),
            GeneratedWeather.temperate(7),
            START);
    shed.advance(Duration.ofHours(1));
  }

  @AfterEach
  void close() {
    shed.daemon().close();
  }

  @Test
  void aShedThatRuns_isWell_andLosesNothing() throws Exception {
    Health health = healthOver(Duration.ofSeconds(10));

    assertThat(health.isWell()).isTrue();
    assertThat(health.silentProbes()).isEmpty();
    assertThat(health.outputs()).contains("curing-heater", "storage-exhaust");
    assertThat(health.sentences(Optional.of(health))).isEmpty();
  }

  @Test
  void aProbeThatIsLost_isNamed() throws Exception {
    Health before = healthOver(Duration.ofSeconds(10));
    shed.shed().inject(ShedFault.of(ShedFault.Kind.PROBE_SILENT, "outdoor"));
    shed.advance(Duration.ofMinutes(10));
    Health after = healthOver(Duration.ofSeconds(10));

    assertThat(after.isWell()).isTrue();
    assertThat(after.silentProbes()).containsExactly("outdoor");
    assertThat(after.lostSince(before))
        .containsExactly("Probe outdoor gave values before, and gives none now.");
    assertThat(before.lostSince(after)).isEmpty();
  }

  @Test
  void controlThatStandsStill_isNotWell() {
    ControlReport told = report();

    assertThat(Health.of(told, told, null).isWell()).isFalse();
    assertThat(Health.of(told, told, null).trouble())
        .containsExactly("Control answers but did not look at the rooms meanwhile.");
  }

  @Test
  void noControl_isSaid_andEndsWithOne() throws Exception {
    Files.writeString(file, Files.readString(file).replace("tick = \"10s\"", "tick = \"1s\""));
    Path before = folder.resolve("before.json");
    CommandRun run = CommandRun.of("health", "--json", "--settings", file.toString());
    Files.writeString(before, run.out());

    assertThat(run.exit()).isEqualTo(1);
    assertThat(JsonOutput.read(before, Health.class))
        .isEqualTo(
            new Health(
                false,
                false,
                false,
                List.of(),
                List.of(),
                List.of(),
                List.of(
                    "Control does not answer: nothing is known of how the rooms are now. What is on"
                        + " record is shown.")));
  }

  private Health healthOver(Duration time) throws InterruptedException {
    ControlReport first = report();
    shed.advance(time);
    return Health.of(first, report(), null);
  }

  private ControlReport report() {
    return Objects.requireNonNull(shed.daemon().view().latest());
  }
}
