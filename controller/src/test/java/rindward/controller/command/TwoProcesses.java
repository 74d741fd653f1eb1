package rindward.controller.command;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** The jar on a simulated shed as control and page, each a process that can be mistreated. */
final class TwoProcesses implements AutoCloseable {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Path folder;
  private final Path settings;
  private final int port;
  private final HttpClient http =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build();
  private final List<Process> started = new ArrayList<>();
  private String cookie = "";
  private String proof = "";

  /**
   * @param tick how often the shed is looked at, as settings say it
   */
  TwoProcesses(Path folder, String tick) throws IOException {
    this.folder = folder;
    this.settings = folder.resolve("shed.toml");
    try (ServerSocket free = new ServerSocket(0)) {
      this.port = free.getLocalPort();
    }
    Files.writeString(
        settings,
        Files.readString(Path.of("examples/shed.toml"))
            .replace("port = 8420", "port = " + port)
            .replace("tick = \"10s\"", "tick = \"" + tick + "\""));
  }

  Path store() {
    return folder.resolve("rindward.db");
  }

  int port() {
    return port;
  }

  /** Starts a command on the shed; what it prints goes into a file beside it. */
  Process start(String command, String... more) throws IOException {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.addAll(List.of("-Xmx64m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1"));
    line.addAll(List.of("-jar", System.getProperty("rindward.jar"), command));
    line.addAll(List.of("--settings", settings.toString()));
    line.addAll(List.of(more));
    Process process =
        new ProcessBuilder(line)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.appendTo(printed().toFile()))
            .start();
    started.add(process);
    return process;
  }

  private Path printed() {
    return folder.resolve("printed.txt");
  }

  /** Returns what was printed so far. */
  String said() throws IOException {
    return Files.readString(printed());
  }

  /** Returns the page that a run has started beside it. */
  static Optional<ProcessHandle> pageOf(Process run) {
    return run.toHandle().children().filter(ProcessHandle::isAlive).findFirst();
  }

  /** Sends a signal. */
  static void signal(long pid, String name) throws IOException, InterruptedException {
    new ProcessBuilder("kill", "-" + name, Long.toString(pid)).start().waitFor();
  }

  /** Returns the port numbers that a process listens on. */
  static List<Integer> listening(long pid) throws IOException {
    List<String> inodes = new ArrayList<>();
    try (Stream<Path> handles = Files.list(Path.of("/proc/" + pid + "/fd"))) {
      for (Path handle : handles.toList()) {
        String to = Files.readSymbolicLink(handle).toString();
        if (to.startsWith("socket:[")) {
          inodes.add(to.substring("socket:[".length(), to.length() - 1));
        }
      }
    }
    List<Integer> ports = new ArrayList<>();
    for (String table : List.of("tcp", "tcp6", "udp", "udp6")) {
      for (String row : Files.readAllLines(Path.of("/proc/" + pid + "/net/" + table))) {
        String[] field = row.strip().split(" +");
        boolean isOpen = field.length > 9 && (field[3].equals("0A") || table.startsWith("udp"));
        if (isOpen && inodes.contains(field[9])) {
          ports.add(Integer.parseInt(field[1].substring(field[1].indexOf(':') + 1), 16));
        }
      }
    }
    return ports;
  }

  /** Tells whether the page shows rooms that were measured, and control answers it. */
  boolean isWell() {
    try {
      JsonNode now = get("/api/now");
      return now.at("/rooms/0/temperatureC").isNumber()
          && !now.at("/health").asText().contains("Control");
    } catch (IOException notYet) {
      return false;
    }
  }

  JsonNode get(String path) throws IOException {
    return JSON.readTree(text(path));
  }

  String text(String path) throws IOException {
    return send(request(path).GET()).body();
  }

  /** Returns a meter of the shed. */
  double meter(String name) throws IOException {
    return text("/metrics")
        .lines()
        .filter(line -> line.startsWith(name + " ") || line.startsWith(name + "{"))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' '))))
        .findFirst()
        .orElse(Double.NaN);
  }

  /** Becomes the owner with the code that was printed. */
  void signIn() throws IOException {
    String said = said();
    String code = said.substring(said.indexOf("code: ") + 6).lines().findFirst().orElseThrow();
    HttpResponse<String> owner =
        post(
            "/api/set-up",
            "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"a russet gourd\"}".formatted(code));
    String cookies = owner.headers().firstValue("Set-Cookie").orElseThrow();
    cookie = cookies.substring(0, cookies.indexOf(';'));
    proof = JSON.readTree(owner.body()).path("csrfToken").asText();
  }

  HttpResponse<String> post(String path, String body) throws IOException {
    return send(
        request(path)
            .header("Content-Type", "application/json")
            .header("X-CSRF-Token", proof)
            .header("Idempotency-Key", "key-" + System.nanoTime())
            .POST(BodyPublishers.ofString(body)));
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
        .timeout(Duration.ofSeconds(10))
        .header("Cookie", cookie.isEmpty() ? "none=1" : cookie);
  }

  private HttpResponse<String> send(HttpRequest.Builder request) throws IOException {
    try {
      return http.send(request.build(), BodyHandlers.ofString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  @Override
  public void close() throws InterruptedException {
    for (Process process : started) {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      process.waitFor(10, TimeUnit.SECONDS);
    }
  }
}
