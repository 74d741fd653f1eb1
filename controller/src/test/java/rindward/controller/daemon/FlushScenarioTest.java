package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/** What is measured reaches the disk soon, and whatever anybody has said. */
class FlushScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private Settings settings;

  @BeforeEach
  void readSettings() throws Exception {
    Path file = folder.resolve("shed.toml");
    String example = Files.readString(Path.of("examples/shed.toml"));
    Files.writeString(file, example.replace("port = 8420", "port = 0"));
    settings = SettingsReader.read(file, new Problems()).orElseThrow();
  }

  /** The room's first sample is taken at the start, and a flush needs no more than a moment. */
  @Test
  void aBoardThatBrownsOutAfterSeconds_hasKeptItsFirstSample() throws Exception {
    Time time = Time.system();
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    try (Daemon daemon = new Daemon(settings, shed, time, true)) {
      daemon.start(1);
      Awaitility.await()
          .atMost(Duration.ofSeconds(5))
          .untilAsserted(() -> assertThat(newestKept()).isPresent());
    }
  }

  @Test
  void anEntryThatThisVersionCannotRead_costsNoSample() throws Exception {
    Time.Stepped time = new Time.Stepped(START);
    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    try (Database database = new Database(settings.store())) {
      new Journal(database)
          .append(
              "request-1",
              "KB1",
              OptionalLong.empty(),
              START.toEpochMilli(),
              "Wren",
              "{\"v\":99,\"kind\":\"teleported\",\"lot\":\"KB1\",\"at\":\"2026-12-10T17:00:00Z\"}");
    }
    try (Daemon daemon = new Daemon(settings, shed, time, false)) {
      time.advance(settings.tick());
      daemon.step();
      daemon.flush();

      assertThat(newestKept()).hasValue(START.plus(settings.tick()).toEpochMilli());
      assertThat(daemon.latest()).isNotNull();
    }
  }

  private OptionalLong newestKept() {
    try (Database database = new Database(settings.store())) {
      return new SampleStore(database, new SampleLog(database)).newestMillis();
    }
  }
}
