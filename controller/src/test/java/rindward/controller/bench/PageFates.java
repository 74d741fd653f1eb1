package rindward.controller.bench;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.ByteBuffer;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.link.HeardControl;
import rindward.controller.link.SocketPlace;
import rindward.controller.store.Database;
import rindward.controller.store.Journal;

/**
 * What becomes of control's ticks, one a second, while its page is mistreated in every way: prints
 * how late ticks were, and what control took of memory. {@code PageFates JAR EXAMPLE SECONDS}.
 */
public final class PageFates implements AutoCloseable {
  private static final int SETTLING_SECONDS = 20;
  private static final int MOST_CONNECTIONS = 2_000;

  private final Path folder;
  private final int port;
  private final Process run;
  private final int seconds;

  private PageFates(Path jar, Path example, int seconds) throws IOException {
    this.folder = Files.createTempDirectory("fates");
    this.port = ServedShed.freePort();
    this.seconds = seconds;
    Path settings = folder.resolve("shed.toml");
    Files.writeString(
        settings,
        Files.readString(example)
            .replace("port = 8420", "port = " + port)
            .replace("tick = \"10s\"", "tick = \"1s\""));
    this.run =
        Jvm.with(List.of("-jar", jar.toString(), "run", "--settings", settings.toString()))
            .redirectOutput(folder.resolve("printed.txt").toFile())
            .start();
  }

  /** One way to mistreat it, done over and over again until its time is over. */
  @FunctionalInterface
  private interface Fate {
    void once(Instant end) throws Exception;
  }

  /** Runs every fate and prints the table. */
  public static void main(String[] args) throws Exception {
    try (PageFates fates =
        new PageFates(Path.of(args[0]), Path.of(args[1]), Integer.parseInt(args[2]))) {
      TimeUnit.SECONDS.sleep(SETTLING_SECONDS);
      System.out.println(
          "| what becomes of the page | ticks | late, median, ms | 99 % | latest | skipped |"
              + " control, MB |");
      System.out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: |");
      fates.row("nothing", end -> pause(end, 1_000));
      fates.row("killed every three seconds", fates::kill);
      fates.row("stopped (SIGSTOP)", fates::stop);
      fates.row("asked without end by 16", fates::ask);
      fates.row(MOST_CONNECTIONS + " connections that ask nothing", fates::connect);
      fates.row("a million words to the socket, over and over", fates::flood);
      fates.row("listeners that read nothing", fates::beDeaf);
      fates.row("the record locked for a minute", fates::lock);
      fates.row("forged entries, as many as the disk takes", fates::forge);
    }
  }

  private void row(String name, Fate fate) throws Exception {
    Instant end = Instant.now().plusSeconds(seconds);
    List<ShedSnapshot> heard = new ArrayList<>();
    try (HeardControl ear = new HeardControl(place(), Duration.ofSeconds(30), System::nanoTime)) {
      ear.eachReport(report -> heard.add(report.snapshot()));
      CompletableFuture<Void> mistreating =
          CompletableFuture.runAsync(
              () -> {
                while (Instant.now().isBefore(end)) {
                  try {
                    fate.once(end);
                  } catch (Exception thatIsItsPurpose) {
                    pause(end, 50);
                  }
                }
              });
      while (!mistreating.isDone()) {
        ear.turn();
      }
    }
    print(name, heard);
  }

  private void print(String name, List<ShedSnapshot> heard) throws IOException {
    long first = heard.get(0).at().toEpochMilli();
    List<Long> late = new ArrayList<>();
    for (ShedSnapshot snapshot : heard) {
      long steps = snapshot.tick() - heard.get(0).tick();
      long skipped = snapshot.overruns() - heard.get(0).overruns();
      late.add(snapshot.at().toEpochMilli() - first - 1_000 * (steps + skipped));
    }
    long earliest = late.stream().mapToLong(l -> l).min().orElse(0);
    late.replaceAll(l -> l - earliest);
    late.sort(null);
    ShedSnapshot last = heard.get(heard.size() - 1);
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %d | %d |%n",
        name,
        last.tick() - heard.get(0).tick(),
        late.get(late.size() / 2),
        late.get(Math.min(late.size() - 1, late.size() * 99 / 100)),
        late.get(late.size() - 1),
        last.overruns() - heard.get(0).overruns(),
        residentMb(run.pid()));
  }

  private void kill(Instant end) throws Exception {
    page().forEach(ProcessHandle::destroyForcibly);
    pause(end, 3_000);
  }

  private void stop(Instant end) throws Exception {
    for (ProcessHandle page : page().toList()) {
      signal("STOP", page);
      pause(end, 1_000L * seconds);
      signal("CONT", page);
    }
  }

  private void ask(Instant end) {
    HttpClient client = HttpClient.newHttpClient();
    Stream.generate(() -> URI.create("http://127.0.0.1:" + port + "/metrics"))
        .limit(16)
        .map(
            uri -> client.sendAsync(HttpRequest.newBuilder(uri).build(), BodyHandlers.discarding()))
        .toList()
        .forEach(CompletableFuture::join);
  }

  private void connect(Instant end) throws IOException {
    List<SocketChannel> open = new ArrayList<>();
    try {
      while (open.size() < MOST_CONNECTIONS && Instant.now().isBefore(end)) {
        open.add(SocketChannel.open(new InetSocketAddress("127.0.0.1", port)));
      }
      pause(end, 5_000);
    } finally {
      for (SocketChannel one : open) {
        one.close();
      }
    }
  }

  private void flood(Instant end) throws IOException {
    try (SocketChannel socket = SocketChannel.open(address())) {
      ByteBuffer million = ByteBuffer.allocate(1_000_000);
      while (million.hasRemaining()) {
        socket.write(million);
      }
    }
  }

  private void beDeaf(Instant end) throws IOException {
    try (SocketChannel one = SocketChannel.open(address());
        SocketChannel two = SocketChannel.open(address())) {
      pause(end, 1_000L * seconds);
    }
  }

  private void lock(Instant end) throws SQLException {
    try (Connection held =
            DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("rindward.db"));
        Statement sql = held.createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      pause(end, 60_000);
      sql.execute("ROLLBACK");
    }
  }

  private void forge(Instant end) {
    try (Database database = new Database(folder.resolve("rindward.db"))) {
      Journal journal = new Journal(database);
      for (long i = System.nanoTime(); Instant.now().isBefore(end); i++) {
        journal.append(
            "forged-" + i,
            "hand storage",
            OptionalLong.empty(),
            System.currentTimeMillis(),
            "Wren",
            "{\"kind\":\"switched-by-hand\",\"room\":\"storage\",\"part\":\"HEATER\",\"on\":true,"
                + "\"until\":\"2099-01-01T00:00:00Z\",\"at\":\"2020-01-01T00:00:00Z\"}");
      }
    }
  }

  private Stream<ProcessHandle> page() {
    return run.toHandle().children().filter(ProcessHandle::isAlive);
  }

  private SocketPlace place() {
    return SocketPlace.of(folder.resolve("rindward.db"));
  }

  private UnixDomainSocketAddress address() {
    return UnixDomainSocketAddress.of(place().path());
  }

  private static void signal(String name, ProcessHandle process) throws Exception {
    new ProcessBuilder("kill", "-" + name, Long.toString(process.pid())).start().waitFor();
  }

  private static void pause(Instant end, long millis) {
    long left = Math.min(millis, Math.max(0, Duration.between(Instant.now(), end).toMillis()));
    try {
      TimeUnit.MILLISECONDS.sleep(left);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static long residentMb(long pid) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      String line = lines.filter(l -> l.startsWith("VmRSS:")).findFirst().orElseThrow();
      return Long.parseLong(line.replaceAll("\\D", "")) / 1024;
    }
  }

  @Override
  public void close() throws InterruptedException {
    run.descendants().forEach(ProcessHandle::destroyForcibly);
    run.destroy();
    run.waitFor();
  }
}
