package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.control.Tick;
import rindward.controller.control.rule.RuleBasedController;
import rindward.controller.page.Page;
import rindward.controller.settings.AlarmTableReader;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;
import rindward.controller.task.SteppedThread;
import rindward.controller.task.TaskSupervisor;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.SimulatedShed;

/** A page of the database that went bad on a quiet disk, after a clean stop. */
class DamagedPageScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");

  @TempDir private Path folder;
  private final SteppedThread thread = new SteppedThread();
  private final Time time = () -> new Tick(START.plusNanos(thread.nanos()), thread.nanos());

  @Test
  void isToldWithinAMinuteOfTheStart_whileTheRoomsAreRun() throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(Path.of("examples/shed.toml")));
    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();
    leaveADamagedPage(settings.store());

    SimulatedShed shed = SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time);
    TaskSupervisor tasks = new TaskSupervisor(() -> time.now().at(), thread::nanos);
    try (Daemon daemon =
        new Daemon(
            settings, shed, time, false, HostMachine.none(), new RuleBasedController(), tasks)) {
      daemon.step();
      assertThat(daemon.latest().rooms()).isNotEmpty();
      daemon.startTasks(name -> thread);
      for (int tick = 0; tick < 6; tick++) {
        thread.advance(settings.tick());
        daemon.step();
      }

      assertThat(Duration.between(START, time.now().at())).isEqualTo(Duration.ofMinutes(1));
      assertThat(daemon.latest().store())
          .startsWith("The store is damaged, " + settings.store())
          .endsWith("there is no copy to go on from");
      try (Page page = new Page(settings, daemon.view(), time)) {
        assertThat(page.metrics()).contains("rindward_store_healthy 0.0");
        assertThat(page.now().now().health()).contains("damaged");
      }
      assertThat(daemon.latest().judgement().open(AlarmTableReader.builtIn()))
          .anyMatch(id -> id.kind() == AlarmKind.STORE_DAMAGED);
    }
  }

  /** Fills the journal over many pages, and spoils the heading of one that holds what was said. */
  private static void leaveADamagedPage(Path store) throws IOException {
    try (Database database = new Database(store)) {
      Journal journal = new Journal(database);
      for (int i = 0; i < 200; i++) {
        journal.append(
            "request-" + i,
            "KB1",
            OptionalLong.empty(),
            START.minusSeconds(3600).toEpochMilli(),
            "Wren",
            "{\"kind\":\"noted\",\"lot\":\"KB1\",\"text\":\"said-%03d\",\"at\":\"%s\"}"
                .formatted(i, START.minusSeconds(3600)));
      }
    }
    String bytes = Files.readString(store, StandardCharsets.ISO_8859_1);
    int pageBytes = 1024;
    int page = bytes.indexOf("said-100") / pageBytes;
    try (RandomAccessFile file = new RandomAccessFile(store.toFile(), "rw")) {
      file.seek((long) page * pageBytes);
      file.write(new byte[16]);
    }
  }
}
