package rindward.controller.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.control.Tick;
import rindward.controller.daemon.SimulatedRun;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ReportSocket;
import rindward.controller.link.SocketPlace;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;

/** The page as a process of its own: by whose time it lives, whose settings, and whose record. */
class PageProcessTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private String example;
  private Settings settings;
  private SimulatedRun shed;
  private ReportSocket socket;
  private PageProcess page;

  @BeforeEach
  void aShedThatTells() throws Exception {
    example = Files.readString(Path.of("examples/shed.toml")).replace("port = 8420", "port = 0");
    settings = read(example);
    shed = new SimulatedRun(settings, GeneratedWeather.temperate(7), START);
    shed.advance(Duration.ofMinutes(10));
    socket = new ReportSocket(SocketPlace.of(settings.store()), () -> {}, System::nanoTime);
  }

  @AfterEach
  void close() throws Exception {
    if (page != null) {
      page.close();
    }
    socket.close();
    shed.daemon().close();
  }

  @Test
  void livesByControlsTime_whateverItsOwnClockSays() throws Exception {
    begin(settings);
    Instant controls = shed.daemon().view().latest().told().at();

    assertThat(page.page().shed().now()).isBetween(controls, controls.plusSeconds(60));
  }

  /** Somebody has edited the file, and the page was started anew, control was not. */
  @Test
  void withOtherSettingsThanControls_itShowsTheRoomsThatAreRun_eachAsItself() throws Exception {
    int storage = example.indexOf("[rooms.storage]");
    int curing = example.indexOf("[rooms.curing]");
    assertThat(curing).isNotNegative().isLessThan(storage);
    begin(
        read(
            example
                .replace("[rooms.curing]", "[rooms.attic]")
                .replace("room = \"curing\"", "room = \"attic\"")));
    double held = shed.daemon().latest().rooms().get(1).picture().temperatureMilliC() / 1000.0;

    assertThat(page.page().now().now().rooms())
        .extracting(room -> room.name())
        .containsExactly("curing", "storage");
    assertThat(page.page().metrics())
        .contains("rindward_room_temperature_celsius{room=\"storage\"} " + held)
        .contains("rindward_room_temperature_celsius{room=\"attic\"} NaN");
  }

  @Test
  void whenTheRecordIsPutInAnothersPlace_itEnds_toBeStartedAnew() throws Exception {
    begin(settings);
    CompletableFuture<Boolean> ended =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return page.awaitEnd();
              } catch (InterruptedException e) {
                throw new IllegalStateException(e);
              }
            });
    shed.daemon().flush();
    Path other = folder.resolve("other.db");
    Files.copy(settings.store(), other);
    assertThat(ended).isNotDone();

    Files.move(other, settings.store(), StandardCopyOption.REPLACE_EXISTING);

    assertThat(ended.get(30, TimeUnit.SECONDS)).isFalse();
  }

  /** Its own clock is three days ahead. */
  private void begin(Settings of) {
    Instant wrong = START.plus(Duration.ofDays(3));
    long begun = System.nanoTime();
    page =
        new PageProcess(
            of, () -> new Tick(wrong.plusNanos(System.nanoTime() - begun), System.nanoTime()));
    await()
        .atMost(Duration.ofSeconds(60))
        .until(
            () -> {
              tell();
              return !page.page().now().now().rooms().isEmpty();
            });
  }

  private void tell() throws IOException {
    ControlReport report = shed.daemon().view().latest();
    socket.tell(report);
    socket.turn();
  }

  private Settings read(String text) throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, text);
    Problems problems = new Problems();
    return SettingsReader.read(file, problems)
        .orElseThrow(() -> new AssertionError(problems.list().toString()));
  }
}
