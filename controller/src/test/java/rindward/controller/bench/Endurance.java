package rindward.controller.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;
import rindward.controller.store.samples.SampleLog;

/**
 * Prints what years of running cost: bytes written, the heap, the database's growth, what a full
 * disk does, and what a hundred rooms take. Each part runs in a process of its own with the
 * service's flags. Run by {@code mvn -Pquick,endurance verify}; {@code -Ddays=30 -Dyears=10
 * -Dminutes=10} are the lengths, {@code -Dfolder=} a folder on the disk that is meant. The block
 * device counts for everybody, and only a small disk is filled: give it one of its own.
 */
public final class Endurance {
  private static final int YEAR_DAYS = 365;
  private static final Duration HOUR = Duration.ofHours(1);

  /** From the first tenth of the time to its end; caches fill at the beginning. */
  private static final double MOST_GROWTH = 1.2;

  private Endurance() {}

  /**
   * @param args the example settings, the days over which bytes are counted, the years over which
   *     database and heap are watched (flushed once an hour, which saves time and changes neither),
   *     the minutes of the load, and a folder on the disk that is meant (a folder in memory counts
   *     no bytes)
   */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory(Path.of(args[4]), "endurance");
    int days = Integer.parseInt(args[1]);
    try {
      System.out.println("| | |\n| --- | ---: |");
      written(quietDays(args[0], folder, days, SampleLog.FLUSH_INTERVAL), days);
      int years = Integer.parseInt(args[2]);
      System.out.println("\n| after years, two rooms at 10 s | |\n| --- | ---: |");
      grown(quietDays(args[0], folder, years * YEAR_DAYS, HOUR), years);
      System.out.println("\n| a full disk | |\n| --- | --- |");
      System.out.println(Jvm.run(FullDisk.class, args[0], folder.toString()));
      System.out.println("\n| 100 rooms, 400 probes at 1 s | |\n| --- | ---: |");
      System.out.println(Jvm.run(HundredRooms.class, folder.toString(), args[3]));
    } finally {
      delete(folder);
    }
  }

  private static String quietDays(String settings, Path folder, int days, Duration flushInterval)
      throws IOException, InterruptedException {
    return Jvm.run(
        QuietDays.class,
        settings,
        folder.toString(),
        String.valueOf(days),
        String.valueOf(flushInterval.toSeconds()));
  }

  private static void written(String printed, int days) {
    String[] last = lastLine(printed);
    double perDay = 1e6 * days;
    line("bytes written a day by write_bytes", "%.1f MB", Long.parseLong(last[0]) / perDay);
    line(
        "the same by wchar, what was handed to the system",
        "%.1f MB",
        Long.parseLong(last[1]) / perDay);
    line(
        "by the counter of the block device, journal and other programs included",
        "%.1f MB",
        Long.parseLong(last[2]) / perDay);
  }

  private static void grown(String printed, int years) {
    String[] last = lastLine(printed);
    line("database after " + years + " years", "%.0f MB", Long.parseLong(last[3]) / 1e6);
    line(
        "a copy of it, which comes on top of each day's bytes",
        "%.0f MB",
        Long.parseLong(last[4]) / 1e6);
    System.out.printf(
        "%nHeap in use after a full collection, -Xmx64m%n%n| day | MB |%n| ---: | ---: |%n");
    String[] lines = printed.split("\n");
    for (int i = 0; i < lines.length - 1; i++) {
      String[] heap = lines[i].split(" ");
      System.out.printf(Locale.ROOT, "| %s | %.1f |%n", heap[0], Long.parseLong(heap[1]) / 1e6);
    }
    long early = Long.parseLong(lines[1].split(" ")[1]);
    long late = Long.parseLong(lines[lines.length - 2].split(" ")[1]);
    if (late > early * MOST_GROWTH) {
      throw new IllegalStateException("the heap grew from " + early + " to " + late + " bytes");
    }
  }

  private static String[] lastLine(String printed) {
    return printed.substring(printed.lastIndexOf('\n') + 1).split(" ");
  }

  private static void line(String what, String format, double value) {
    System.out.printf(Locale.ROOT, "| %s | " + format + " |%n", what, value);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
