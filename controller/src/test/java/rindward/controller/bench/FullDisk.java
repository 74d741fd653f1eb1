package rindward.controller.bench;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.OptionalLong;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.journal.Harvested;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.StoreException;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The daemon on a file system that is really full, for hours of simulated time, and then has room
 * again. Prints what was lost. Only on a small file system of its own, which it fills to the brim.
 */
final class FullDisk {
  private static final Instant START = Instant.parse("2026-09-20T00:00:00Z");
  private static final long LARGEST = 1_000_000_000;
  private static final int HOURS = 24;
  private static final String ROOM = "storage";

  private final Settings settings;
  private final Time.Stepped time = new Time.Stepped(START);
  private final Daemon daemon;
  private long ticks;
  private long holding;
  private String said = "";

  private FullDisk(Settings settings) throws IOException {
    this.settings = settings;
    daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            false);
  }

  /** Takes the example settings and the folder. */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[1]);
    if (Files.getFileStore(folder).getTotalSpace() > LARGEST) {
      line("not tried", "the folder is not on a small file system of its own");
      return;
    }
    Path own = Files.createDirectory(folder.resolve("full"));
    Path file = Files.copy(Path.of(args[0]), own.resolve("shed.toml"));
    new FullDisk(SettingsReader.read(file, new Problems()).orElseThrow())
        .live(own.resolve("filler"));
  }

  private void live(Path filler) throws IOException, InterruptedException, SQLException {
    live(Duration.ofHours(1));
    fill(filler);
    long before = ticks;
    live(Duration.ofHours(HOURS));
    line("decisions taken in " + HOURS + " h of a full disk", ticks - before);
    line("of these with samples waiting in memory", holding);
    line("what the page says", said);
    line("an entry by a person", say());
    Files.delete(filler);
    live(Duration.ofMinutes(1));
    line("the same entry, once there is room", say());
    daemon.close();
    line("seconds of the record that are lost", lostSeconds());
    line("integrity of the file", integrity());
  }

  private void live(Duration length) throws InterruptedException {
    Instant end = time.now().at().plus(length);
    Instant flushed = time.now().at();
    while (time.now().at().isBefore(end)) {
      time.advance(settings.tick());
      daemon.step();
      ticks++;
      String store = daemon.latest().store();
      if (store.contains("holding samples")) {
        holding++;
        said = store;
      }
      Instant now = time.now().at();
      if (Duration.between(flushed, now).compareTo(SampleLog.FLUSH_INTERVAL) >= 0) {
        daemon.hear();
        daemon.flush();
        flushed = now;
      }
    }
    daemon.flush();
  }

  private static void fill(Path filler) throws IOException {
    byte[] block = new byte[4096];
    try (OutputStream out = Files.newOutputStream(filler)) {
      while (true) {
        out.write(block);
      }
    } catch (IOException full) {
      if (Files.getFileStore(filler).getUsableSpace() >= block.length) {
        throw full;
      }
    }
  }

  private String say() {
    Instant now = time.now().at();
    try {
      EntryService.Said answer =
          daemon
              .door()
              .say(
                  new Harvested("KB1", "kabocha", "", 40, ROOM, START),
                  "Wren",
                  "harvest",
                  OptionalLong.empty(),
                  now);
      return answer.refusal().orElse("kept");
    } catch (StoreException e) {
      return e.getMessage().replaceAll("database .*?: ", "database: ");
    }
  }

  private long lostSeconds() {
    long[] last = {START.toEpochMilli() + settings.tick().toMillis()};
    long[] lost = {0};
    try (Database database = new Database(settings.store())) {
      new SampleStore(database, new SampleLog(database))
          .history(ROOM)
          .forEach(
              START.toEpochMilli(),
              Long.MAX_VALUE / 2,
              run -> {
                for (int i = 0; i < run.count(); i++) {
                  long at = run.startMillis() + (long) run.stepMillis() * i;
                  lost[0] += Math.max(0, at - last[0] - settings.tick().toMillis());
                  last[0] = at;
                }
              });
    }
    return lost[0] / 1000;
  }

  private String integrity() throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + settings.store());
        Statement sql = connection.createStatement();
        ResultSet row = sql.executeQuery("PRAGMA integrity_check")) {
      return row.getString(1);
    }
  }

  private static void line(String what, Object value) {
    System.out.println("| " + what + " | " + value + " |");
  }
}
