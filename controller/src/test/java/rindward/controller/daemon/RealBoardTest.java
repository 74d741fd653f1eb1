package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.settings.BoardFile;
import rindward.controller.settings.Settings;
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
  void hangUpAProbe() {
    machine = new FakeMachine(folder.resolve("sys"), time);
    machine.airSays(6_500, 63_000);
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
    Settings settings =
        BoardFile.in(folder, BoardFile.AIR, BoardFile.FRUIT, BoardFile.heater(17)).settings();
    return new Daemon(settings, new RealBoard(settings, () -> machine).open(), time, false);
  }
}
