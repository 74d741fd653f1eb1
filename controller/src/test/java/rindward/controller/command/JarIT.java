package rindward.controller.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The one jar, started as a newcomer starts it. */
class JarIT {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir private Path folder;

  @Test
  void demoOnce_printsAStatusForMachines_andEnds() throws Exception {
    Ended demo = run("demo", "--once", "--json");

    assertThat(demo.exit()).isZero();
    JsonNode status = JSON.readTree(demo.out());
    assertThat(status.at("/siteName").asText()).isEqualTo("Hollin Bank Farm");
    assertThat(status.at("/rooms")).hasSize(2);
    assertThat(status.at("/rooms/0/temperatureC").asDouble()).isBetween(20.0, 32.0);
    assertThat(status.at("/lotCount").asInt()).isEqualTo(15);
    assertThat(status.at("/toEat")).as("no more than fit the first page").hasSize(6);
    assertThat(status.findValuesAsText("state")).contains("eat-first", "ready");
  }

  @Test
  void run_servesALivePage_takesALotFromTheCommandLine_andStopsCleanly() throws Exception {
    Path settings = folder.resolve("shed.toml");
    int port = freePort();
    Files.writeString(
        settings,
        Files.readString(Path.of("examples/shed.toml"))
            .replace("port = 8420", "port = " + port)
            .replace("tick = \"10s\"", "tick = \"1s\""));
    Process daemon = start("run", "--settings", settings.toString());
    try {
      await().atMost(Duration.ofSeconds(60)).until(() -> isLooking(port));
      Ended said =
          run(
              "lot",
              "add",
              "--settings",
              settings.toString(),
              "kb1",
              "--crop",
              "kabocha",
              "--place",
              "curing",
              "--count",
              "40");
      assertThat(said.exit()).as(said.err()).isZero();
      await().atMost(Duration.ofSeconds(30)).until(() -> now(port).at("/lotCount").asInt() == 1);
      assertThat(get(port, "/metrics"))
          .contains("rindward_room_temperature_celsius{room=\"curing\"}");
      Instant first = Instant.parse(now(port).at("/at").asText());
      await()
          .atMost(Duration.ofSeconds(30))
          .until(() -> Instant.parse(now(port).at("/at").asText()).isAfter(first));
    } finally {
      daemon.destroy();
    }
    assertThat(daemon.waitFor(10, TimeUnit.SECONDS)).isTrue();

    Ended shown = run("lot", "show", "--settings", settings.toString(), "KB1", "--json");
    JsonNode lot = JSON.readTree(shown.out()).at("/lots/0");
    assertThat(lot.at("/place").asText()).isEqualTo("curing");
    assertThat(Instant.parse(lot.at("/asOf").asText())).isBeforeOrEqualTo(Instant.now());
    assertThat(lot.at("/curing/elapsedSeconds").isNumber()).isTrue();
  }

  @Test
  void check_brokenSettings_tellsEveryProblemAndOpensNothing() throws Exception {
    Path settings = folder.resolve("broken.toml");
    Files.writeString(settings, "[site]\nname = 7\n[rooms.shed]\npurpose = \"party\"\n");

    Ended check = run("check", "--settings", settings.toString());

    assertThat(check.exit()).isEqualTo(2);
    assertThat(check.err())
        .contains("broken.toml:2:")
        .contains("site.name was '7' but it must be a text")
        .contains("rooms.shed.purpose was 'party'");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(settings);
    }
  }

  private static boolean isLooking(int port) {
    try {
      return now(port).at("/rooms/0/temperatureC").isNumber();
    } catch (IOException e) {
      return false;
    }
  }

  private static JsonNode now(int port) throws IOException {
    return JSON.readTree(get(port, "/api/now"));
  }

  private static String get(int port, String path) throws IOException {
    try {
      return HttpClient.newHttpClient()
          .send(
              HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                  .timeout(Duration.ofSeconds(10))
                  .build(),
              BodyHandlers.ofString())
          .body();
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
  }

  private record Ended(int exit, String out, String err) {}

  private Ended run(String... arguments) throws Exception {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    Process process =
        command(arguments).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
  }

  private Process start(String... arguments) throws IOException {
    return command(arguments)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private static ProcessBuilder command(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-jar");
    command.add(System.getProperty("rindward.jar"));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }
}
