package rindward.controller.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import rindward.controller.daemon.Daemon;
import rindward.controller.daemon.SimulatedBoard;
import rindward.controller.daemon.Time;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Copies;
import rindward.controller.store.Database;
import rindward.controller.store.SampleLog;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The daemon on the example's two rooms for days of simulated time, flushed as often as in life.
 * Prints {@code DAY HEAP} about once a month, and at the end the bytes written by the system's two
 * counters, the bytes of the database and those of a copy.
 */
final class QuietDays {
  private static final Instant START = Instant.parse("2026-09-20T00:00:00Z");
  private static final int HEAP_DAYS = 30;

  private QuietDays() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectory(Path.of(args[1]).resolve("days"));
    Path file = Files.copy(Path.of(args[0]), folder.resolve("shed.toml"));
    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();
    int days = Integer.parseInt(args[2]);
    Time.Stepped time = new Time.Stepped(START);
    Daemon daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            false);
    long blocksBefore = counter("write_bytes");
    long handedBefore = counter("wchar");
    Instant flushed = START;
    for (int day = 0; day <= days; day++) {
      if (day % HEAP_DAYS == 0 || day == days) {
        System.out.println(day + " " + heapBytes());
      }
      Instant end = START.plus(Duration.ofDays(day + 1L));
      while (day < days && time.now().at().isBefore(end)) {
        time.advance(settings.tick());
        daemon.step();
        Instant now = time.now().at();
        if (Duration.between(flushed, now).compareTo(SampleLog.FLUSH_INTERVAL) >= 0) {
          daemon.flush();
          flushed = now;
        }
      }
    }
    daemon.close();
    long blocks = counter("write_bytes") - blocksBefore;
    long handed = counter("wchar") - handedBefore;
    try (Database database = new Database(settings.store())) {
      Path copy = new Copies(database, settings.backups(), settings.zone()).make(time.now().at());
      System.out.println(
          blocks + " " + handed + " " + Files.size(settings.store()) + " " + Files.size(copy));
    }
  }

  private static long heapBytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }

  private static long counter(String name) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of("/proc/self/io"))) {
      String line = lines.filter(l -> l.startsWith(name + ":")).findFirst().orElseThrow();
      return Long.parseLong(line.replaceAll("\\D", ""));
    }
  }
}
