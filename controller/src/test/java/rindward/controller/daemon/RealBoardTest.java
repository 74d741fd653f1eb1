package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.snapshot.Snapshot.RoomState;
import rindward.hardware.OutputKind;

/**
 * The daemon on a board of real parts: a folder of files for the kernel, noted relays for lines.
 */
class RealBoardTest {
  private static final Instant START = Instant.parse("2026-11-01T12:00:00Z");

  @TempDir private Path folder;
  private final Time.Stepped time = new Time.Stepped(START);

  private FakeMachine machine;

  @BeforeEach
  void hangUpAProbe() throws IOException {
    machine = new FakeMachine(folder.resolve("sys"), time);
    Path device = Files.createDirectories(folder.resolve("sys/class/hwmon/hwmon0"));
    Files.writeString(device.resolve("name"), "sht3x\n");
    Files.writeString(device.resolve("temp1_input"), "6500\n");
    Files.writeString(device.resolve("humidity1_input"), "63000\n");
  }

  @Test
  void aTick_readsTheRealProbes_andABrokenOneCostsOnlyItself()
      throws IOException, InterruptedException {
    try (Daemon daemon = daemon()) {
      daemon.step();

      RoomState room = daemon.latest().rooms().get(0);
      assertThat(room.picture().temperatureMilliC()).isEqualTo(6_500);
      assertThat(room.picture().humidityMilliPct()).isEqualTo(63_000);
      assertThat(room.picture().troubles())
          .singleElement()
          .asString()
          .contains("Probe fruit has given no value yet")
          .contains("no 1-Wire driver loaded");
    }
  }

  @Test
  void aRoomNobodyTried_isOnlyObserved_howeverColdItIs() throws IOException, InterruptedException {
    try (Daemon daemon = daemon()) {
      daemon.step();

      assertThat(daemon.latest().rooms().get(0).rulings().get(OutputKind.HEATER).on()).isFalse();
    }
    assertThat(machine.switched()).isNotEmpty().containsOnly("17 off");
  }

  @Test
  void anOutputThatCannotBeOpened_isAReasonNotToStart() {
    machine.breakLine(17);

    assertThatThrownBy(this::daemon)
        .isInstanceOf(IOException.class)
        .hasMessage("relay heater cannot have GPIO 17");
  }

  private Daemon daemon() throws IOException {
    Settings settings = settings();
    return new Daemon(settings, new RealBoard(settings, () -> machine).open(), time, false);
  }

  private Settings settings() throws IOException {
    Path file =
        Files.writeString(
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
            device = "sht3x"
            accuracy = { temperature = 0.3, humidity = 3 }

            [probes.fruit]
            room = "store"
            place = "pulp"
            driver = "1-wire"
            serial = "28-0316a2791bff"

            [outputs.heater]
            room = "store"
            kind = "heater"
            driver = "gpio"
            line = 17
            active = "high"
            """);
    return SettingsReader.read(file, new Problems()).orElseThrow();
  }
}
