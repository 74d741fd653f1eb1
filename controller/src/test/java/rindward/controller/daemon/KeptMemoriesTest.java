package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.control.ControlMemory;
import rindward.controller.control.Tick;
import rindward.controller.estimate.RoomEstimate;
import rindward.controller.room.Room;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;

/** What control believes of the rooms, from one run of the program to the next. */
class KeptMemoriesTest {
  private static final Instant START = Instant.parse("2026-11-20T06:00:00Z");

  @TempDir private Path folder;
  private Settings settings;
  private SimulatedRun run;

  @BeforeEach
  void aDay() throws Exception {
    settings = settings();
    run = new SimulatedRun(settings, GeneratedWeather.temperate(7), START);
    run.advance(Duration.ofHours(6));
    run.daemon().close();
  }

  @AfterEach
  void close() {
    run.daemon().close();
  }

  @Test
  void whatARoomHasTaught_isThereAfterTheEndOfTheProgram() throws IOException {
    RoomEstimate kept = begin("storage", START.plus(Duration.ofHours(7)), true).estimate();

    assertThat(kept.response().heaterRuns()).isPositive();
    assertThat(kept.air()).isNotNull();
    assertThat(kept.outdoor().isKnown()).isTrue();
    assertThat(Files.size(file())).isLessThan(8_000);
  }

  @Test
  void nothingSwitchedGoesOn_andEveryMinimumTimeBeginsAnew() throws IOException {
    ControlMemory begun = begin("storage", START.plus(Duration.ofHours(7)), true);

    assertThat(begun.outputs().states()).isEmpty();
    assertThat(begun.outputs().startedNanos()).isEqualTo(5);
  }

  @Test
  void aClockThatCannotBeBelieved_leavesOnlyWhatDoesNotAge() throws IOException {
    for (ControlMemory begun :
        new ControlMemory[] {
          begin("storage", START.plus(Duration.ofHours(7)), false),
          begin("storage", Instant.EPOCH, true),
        }) {
      assertThat(begun.estimate().air()).isNull();
      assertThat(begun.estimate().response().heaterRuns()).isPositive();
    }
  }

  @Test
  void ofAnotherSeason_orOfOtherParts_nothingIsTaken() throws IOException {
    assertThat(begin("storage", START.plus(Duration.ofDays(90)), true).estimate())
        .isEqualTo(RoomEstimate.unknown(5));
    KeptMemories otherwise = new KeptMemories(file(), Map.of("storage", "another heater"));
    assertThat(otherwise.begin(room("storage"), at(7), true).estimate())
        .isEqualTo(RoomEstimate.unknown(5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "{",
        "[]",
        "{\"version\":1}",
        "{\"version\":2,\"rooms\":{}}",
        "{\"version\":1,\"rooms\":{\"storage\":null}}",
        "{\"version\":1,\"rooms\":{\"storage\":{\"at\":\"2026-11-20T12:00:00Z\"}}}",
        "{\"version\":1,\"rooms\":{\"storage\":{\"binding\":\"BINDING\",\"at\":null}}}"
      })
  void aFileThatSaysNothing_orSomethingElse_costsWhatWasLearned_andNoMore(String text)
      throws IOException {
    Files.writeString(file(), text);

    assertThat(begin("storage", START.plus(Duration.ofHours(7)), true).estimate())
        .isEqualTo(RoomEstimate.unknown(5));
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"NaN\"", "1e300", "-400", "\"Infinity\""})
  void figuresThatNoRoomCanHave_areNotBelieved(String figure) throws IOException {
    String text = Files.readString(file());
    Files.writeString(file(), text.replaceAll("\"fruitC\":[-0-9.E]+", "\"fruitC\":" + figure));

    assertThat(begin("storage", START.plus(Duration.ofHours(7)), true).estimate())
        .isEqualTo(RoomEstimate.unknown(5));
  }

  private ControlMemory begin(String room, Instant at, boolean isDated) {
    return KeptMemories.of(settings.simulated()).begin(room(room), new Tick(at, 5), isDated);
  }

  private static Tick at(int hours) {
    return new Tick(START.plus(Duration.ofHours(hours)), 5);
  }

  private Room room(String name) {
    return settings.rooms().stream()
        .filter(room -> room.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private Path file() {
    return folder.resolve("rindward.db.estimate");
  }

  private Settings settings() throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")));
    return SettingsReader.read(file, new Problems()).orElseThrow();
  }
}
