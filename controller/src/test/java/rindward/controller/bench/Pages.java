package rindward.controller.bench;

import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.controller.store.Database;
import rindward.controller.store.EntryService;
import rindward.controller.store.Journal;

/**
 * How long the server takes for what each page asks, over HTTP on the same machine with the
 * service's flags: at the demo's size, and after ten invented seasons with ten thousand lots.
 * Prints one table for each; run by {@code mvn -Pquick,benchmark verify}, or by itself.
 */
public final class Pages {
  private static final int TIMES = 21;
  private static final Duration TEN_WEEKS = Duration.ofDays(70);

  /** The one before this year's: then its lots lay in the room of which there are samples. */
  private static final int MEASURED_SEASON = 8;

  /**
   * One lot in so many lies in a room with a probe; all of them would have to be added up first.
   */
  private static final int LOTS_A_MEASURED_ONE = 100;

  /** The service's own heap does not hold such a journal. */
  private static final String HEAP = "-Xmx96m";

  private Pages() {}

  /**
   * @param args the jar and the example settings
   */
  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("pages");
    try {
      print(Path.of(args[0]), Path.of(args[1]), folder);
    } finally {
      delete(folder);
    }
  }

  /** Prints the tables. */
  private static void print(Path jar, Path example, Path folder) throws Exception {
    int port = ServedShed.freePort();
    Path home = Files.createDirectory(folder.resolve("demo"));
    List<String> demo =
        List.of(
            "-Duser.home=" + home,
            "-Djava.io.tmpdir=" + home,
            "-jar",
            jar.toString(),
            "demo",
            "--speed",
            "1",
            "--port",
            String.valueOf(port));
    try (ServedShed shed = ServedShed.start(demo, port, home)) {
      table("the demo: ten weeks, 15 lots", shed, "K1", Instant.now());
    }
    Path settings = longMemory(Files.createDirectory(folder.resolve("seasons")), example, port);
    List<String> run =
        List.of(HEAP, "-jar", jar.toString(), "run", "--settings", settings.toString());
    try (ServedShed shed = ServedShed.start(run, port, folder)) {
      table(
          "ten seasons, 10,000 lots",
          shed,
          TenSeasons.code(MEASURED_SEASON, 0),
          Instant.ofEpochSecond(Season.TO_SECOND));
    }
    System.out.println("\nLoad of the machine: " + Files.readString(Path.of("/proc/loadavg")));
  }

  /** Makes a farm with ten seasons behind it, and a winter of samples, and returns its settings. */
  private static Path longMemory(Path folder, Path example, int port) throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, Files.readString(example).replace("port = 8420", "port = " + port));
    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();
    try (Database database = new Database(settings.store())) {
      DayChunks.fill(database);
      EntryService door = new EntryService(new Journal(database), settings.crops());
      new TenSeasons(Instant.now(), lot -> lot % LOTS_A_MEASURED_ONE == 0 ? Season.ROOM : "cellar")
          .sayTo(door);
    }
    return file;
  }

  /**
   * Prints the table of one shed.
   *
   * @param lot the one that is looked at
   * @param to where the stretches of a room end
   */
  private static void table(String title, ServedShed shed, String lot, Instant to)
      throws IOException, InterruptedException {
    System.out.println(
        "\n| " + title + " | first, ms | least of " + TIMES + ", ms | median, ms | kB |");
    System.out.println("| --- | ---: | ---: | ---: | ---: |");
    for (Map.Entry<String, String> page : pages(shed, lot, to).entrySet()) {
      long[] nanos = new long[TIMES + 1];
      int bytes = 0;
      for (int i = 0; i <= TIMES; i++) {
        long begin = System.nanoTime();
        bytes = shed.get(page.getValue()).length;
        nanos[i] = System.nanoTime() - begin;
      }
      long[] warm = Arrays.stream(nanos).skip(1).sorted().toArray();
      System.out.printf(
          Locale.ROOT,
          "| %s | %.0f | %.0f | %.0f | %.1f |%n",
          page.getKey(),
          nanos[0] / 1e6,
          warm[0] / 1e6,
          warm[TIMES / 2] / 1e6,
          bytes / 1e3);
    }
  }

  /** What the pages ask, in the order in which it is asked here. */
  private static Map<String, String> pages(ServedShed shed, String lot, Instant to)
      throws IOException, InterruptedException {
    Map<String, String> pages = new LinkedHashMap<>();
    pages.put("rooms", "/api/now");
    for (Duration span : List.of(Duration.ofDays(1), TEN_WEEKS)) {
      String days = span.toDays() == 1 ? "a day" : "ten weeks";
      String stretch = "?from=" + to.minus(span) + "&to=" + to;
      String room = "/api/rooms/" + Season.ROOM;
      pages.put(days + " of a room: air", room + "/climate" + stretch);
      pages.put(days + " of a room: marks", room + "/marks" + stretch);
      pages.put(days + " of a room: switchings", room + "/switching" + stretch);
    }
    pages.put("lots that hold fruit", "/api/lots?size=200");
    pages.put("all lots, the first 200", "/api/lots?all=true&size=200");
    pages.put("one lot", "/api/lots/" + lot);
    String harvest = shed.json("/api/lots/" + lot).at("/lot/harvestedAt").asText();
    pages.put("its air since harvest", "/api/lots/" + lot + "/air?from=" + harvest + "&to=" + to);
    pages.put("tastings", "/api/tastings?size=40");
    String tasting = shed.json("/api/tastings").at("/tastings/0/name").asText();
    pages.put(
        "one with its result",
        "/api/tastings/" + URLEncoder.encode(tasting, StandardCharsets.UTF_8).replace("+", "%20"));
    pages.put("varieties", "/api/varieties?size=60");
    pages.put("alarms", "/api/alarms");
    pages.put("their history", "/api/alarms/history");
    pages.put("shed", "/api/shed");
    return pages;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
