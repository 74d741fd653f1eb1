package rindward.controller.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Prints what years of running cost: bytes written, the database's growth, the heap, and what a
 * hundred rooms take. Each part runs in a process of its own with the service's flags. Run by
 * {@code mvn -Pquick,endurance verify}; {@code -Ddays=365 -Dminutes=10} are the lengths.
 */
public final class Endurance {
  private static final int YEAR_DAYS = 365;
  private static final int TEN_YEARS = 10;

  private Endurance() {}

  /**
   * @param args the example settings, the days of the simulated stretch, the minutes of the load,
   *     and a folder on the disk that is meant (a folder in memory counts no bytes)
   */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory(Path.of(args[3]), "endurance");
    int days = Integer.parseInt(args[1]);
    try {
      System.out.println("| | |\n| --- | ---: |");
      written(Jvm.run(QuietDays.class, args[0], folder.toString(), String.valueOf(days)), days);
      System.out.println("\n| 100 rooms, 400 probes at 1 s | |\n| --- | ---: |");
      System.out.println(Jvm.run(HundredRooms.class, folder.toString(), args[2]));
    } finally {
      delete(folder);
    }
  }

  private static void written(String printed, int days) {
    String[] lines = printed.split("\n");
    String[] last = lines[lines.length - 1].split(" ");
    double perDay = 1e6 * days;
    line("bytes written a day by write_bytes", "%.1f MB", Long.parseLong(last[0]) / perDay);
    line(
        "the same by wchar, what was handed to the system",
        "%.1f MB",
        Long.parseLong(last[1]) / perDay);
    line("database after " + days + " days", "%.1f MB", Long.parseLong(last[2]) / 1e6);
    line(
        "ten years at that rate (extrapolated)",
        "%.0f MB",
        Long.parseLong(last[2]) / perDay * YEAR_DAYS * TEN_YEARS);
    line(
        "a copy of it, which comes on top of each day's bytes",
        "%.1f MB",
        Long.parseLong(last[3]) / 1e6);
    System.out.printf(
        "%nHeap in use after a full collection, -Xmx64m%n%n| day | MB |%n| ---: | ---: |%n");
    for (int i = 0; i < lines.length - 1; i++) {
      String[] heap = lines[i].split(" ");
      System.out.printf(Locale.ROOT, "| %s | %.1f |%n", heap[0], Long.parseLong(heap[1]) / 1e6);
    }
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
