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
import rindward.controller.store.Database;
import rindward.controller.store.copies.Copies;
import rindward.hardware.shed.GeneratedWeather;

/**
 * The daemon on the example's two rooms for days of simulated time, flushed as often as it is told.
 * Prints {@code DAY HEAP} ten times, and at the end the bytes written by the process's own two
 * counters and by that of the block device, the bytes of the database and those of a copy.
 */
final class QuietDays {
  private static final Instant START = Instant.parse("2026-09-20T00:00:00Z");
  private static final int LOOKS = 10;
  private static final Path DEVICES = Path.of("/proc/diskstats");
  private static final int NAME = 2;
  private static final int SECTORS_WRITTEN = 9;
  private static final int SECTOR_BYTES = 512;

  private QuietDays() {}

  /** Takes the example settings, a folder, the days, and the seconds from flush to flush. */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createDirectory(Path.of(args[1]).resolve("days-" + args[2]));
    Path file = Files.copy(Path.of(args[0]), folder.resolve("shed.toml"));
    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();
    int days = Integer.parseInt(args[2]);
    Duration flushInterval = Duration.ofSeconds(Long.parseLong(args[3]));
    Time.Stepped time = new Time.Stepped(START);
    Daemon daemon =
        new Daemon(
            settings,
            SimulatedBoard.open(settings, GeneratedWeather.temperate(7), time),
            time,
            false);
    long deviceBefore = deviceBytes(folder);
    long blocksBefore = counter("write_bytes");
    long handedBefore = counter("wchar");
    Instant flushed = START;
    for (int day = 0; day <= days; day++) {
      if (day % Math.max(1, days / LOOKS) == 0 || day == days) {
        System.out.println(day + " " + heapBytes());
      }
      Instant end = START.plus(Duration.ofDays(day + 1L));
      while (day < days && time.now().at().isBefore(end)) {
        time.advance(settings.tick());
        daemon.step();
        Instant now = time.now().at();
        if (Duration.between(flushed, now).compareTo(flushInterval) >= 0) {
          daemon.hear();
          daemon.flush();
          flushed = now;
        }
      }
    }
    daemon.close();
    long blocks = counter("write_bytes") - blocksBefore;
    long handed = counter("wchar") - handedBefore;
    long device = deviceBytes(folder) - deviceBefore;
    try (Database database = new Database(settings.store())) {
      Path copy = new Copies(database, settings.backups(), settings.zone()).make(time.now().at());
      System.out.println(
          String.join(
              " ",
              Stream.of(blocks, handed, device, Files.size(settings.store()), Files.size(copy))
                  .map(String::valueOf)
                  .toList()));
    }
  }

  private static long heapBytes() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }

  /** What was ever written to the device under a folder, by anybody; 0 where it has no counter. */
  private static long deviceBytes(Path folder) throws IOException {
    String device = Path.of(Files.getFileStore(folder).name()).getFileName().toString();
    try (Stream<String> lines = Files.lines(DEVICES)) {
      return lines
          .map(line -> line.strip().split("\\s+"))
          .filter(fields -> fields[NAME].equals(device))
          .mapToLong(fields -> Long.parseLong(fields[SECTORS_WRITTEN]) * SECTOR_BYTES)
          .findFirst()
          .orElse(0);
    }
  }

  private static long counter(String name) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of("/proc/self/io"))) {
      String line = lines.filter(l -> l.startsWith(name + ":")).findFirst().orElseThrow();
      return Long.parseLong(line.replaceAll("\\D", ""));
    }
  }
}
