package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.awaitility.Awaitility;
import org.awaitility.core.ThrowingRunnable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.Settings;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.OutputKind;
import rindward.hardware.mqtt.Broker;
import rindward.hardware.mqtt.BrokerSettings;
import rindward.hardware.mqtt.Incoming;
import rindward.hardware.shed.GeneratedWeather;

/** The whole daemon on a real broker: what it publishes, and the words that it takes. */
class BrokerPublisherTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final String SHED = "rindward/hollin-bank-farm/shed/";
  private static final List<String> TOPICS =
      List.of("state", "rooms/storage", "lots", "alarms", "said", "said/word-0002");
  private static final JsonMapper JSON = new JsonMapper();

  @TempDir private Path folder;
  private final List<String> codes = new CopyOnWriteArrayList<>();
  private final Map<String, String> heard = new HashMap<>();
  private final HttpClient http = HttpClient.newHttpClient();
  private OwnBroker mosquitto;
  private SimulatedRun rehearsal;
  private Page page;
  private Broker listener;

  @BeforeEach
  void aShedThatRuns() throws IOException {
    mosquitto = new OwnBroker(folder);
    rehearsal = new SimulatedRun(settings(), GeneratedWeather.temperate(7), START);
    var unused = rehearsal.live(1);
    page = new Page(rehearsal.settings(), rehearsal.daemon().view(), rehearsal.time());
    page.open(codes::add);
    String uri = "tcp://127.0.0.1:" + mosquitto.port();
    listener = new Broker(new BrokerSettings(uri, "phone", "", "", "test/phone"), System::nanoTime);
    TOPICS.forEach(topic -> listener.listenToEach(SHED + topic));
  }

  @AfterEach
  void end() {
    if (listener != null) {
      listener.close();
      page.close();
      rehearsal.daemon().close();
    }
    if (mosquitto != null) {
      mosquitto.close();
    }
  }

  @Test
  void whoeverListens_seesHowTheShedIs_evenAfterTheBrokerWasAway_andThatItEnded() throws Exception {
    await(() -> assertThat(text("state")).isEqualTo("online"));
    await(() -> assertThat(text("rooms/storage")).contains("\"temperatureC\":1"));
    await(() -> assertThat(json("alarms").path("open").isArray()).isTrue());
    await(() -> assertThat(json("lots").path("lots").isArray()).isTrue());
    Instant before = Instant.parse(json("rooms/storage").path("at").asText());

    mosquitto.kill();
    mosquitto.start();

    await(
        () -> {
          assertThat(text("state")).isEqualTo("online");
          assertThat(Instant.parse(json("rooms/storage").path("at").asText())).isAfter(before);
        });
    rehearsal.daemon().close();
    await(() -> assertThat(text("state")).isEqualTo("offline"));
  }

  @Test
  void aSignedWord_switchesAnOutput_andOneWithoutAKnownTokenDoesNothing() throws Exception {
    await(() -> assertThat(text("state")).isEqualTo("online"));
    Token token = token();
    say(new Token(token.id(), "rind_nobody"), "word-0001");
    await(() -> assertThat(json("said").path("done").isBoolean()).isTrue());
    assertThat(json("said").path("done").asBoolean()).isFalse();
    assertThat(json("said").path("refusal").asText()).contains("The proof does not fit the word");

    say(token, "word-0002");
    await(() -> assertThat(json("said/word-0002").path("done").asBoolean()).isTrue());
    await(
        () ->
            assertThat(rehearsal.daemon().latest().rooms())
                .anyMatch(
                    room ->
                        room.room().name().equals("storage")
                            && room.demand().command(OutputKind.CIRCULATION) != null));
  }

  private record Token(String id, String secret) {
    /** Says a word as the description wants it, by this machine's own arithmetic. */
    String signed(String word) throws GeneralSecurityException, IOException {
      byte[] key =
          MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(key, "HmacSHA256"));
      String proof = HexFormat.of().formatHex(mac.doFinal(word.getBytes(StandardCharsets.UTF_8)));
      return JSON.writeValueAsString(Map.of("key", id, "word", word, "proof", proof));
    }
  }

  private void say(Token token, String request) throws GeneralSecurityException, IOException {
    Instant now = rehearsal.now();
    listener.command(
        SHED + "say",
        token.signed(
            """
            {"request":"%s","at":"%s","say":"switch","room":"storage","kind":"circulation","on":true,\
            "until":"%s"}\
            """
                .formatted(request, now, now.plusSeconds(600))),
        Duration.ofSeconds(30).toNanos());
  }

  /** The network takes real time. */
  private void await(ThrowingRunnable so) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(120))
        .pollInterval(Duration.ofMillis(100))
        .untilAsserted(
            () -> {
              listener.supervise();
              TOPICS.forEach(this::listen);
              so.run();
            });
  }

  private void listen(String topic) {
    for (Incoming said = listener.next(SHED + topic);
        said != null;
        said = listener.next(SHED + topic)) {
      heard.put(topic, said.text());
    }
  }

  private String text(String topic) {
    return heard.getOrDefault(topic, "");
  }

  private JsonNode json(String topic) throws IOException {
    return JSON.readTree(text(topic).isEmpty() ? "{}" : text(topic));
  }

  /** Becomes the owner with the code that the first start prints, and makes a token. */
  private Token token() throws Exception {
    HttpResponse<String> owner =
        post(
            "/api/set-up",
            "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"a russet gourd\"}"
                .formatted(codes.get(0)));
    String cookie = owner.headers().firstValue("Set-Cookie").orElseThrow();
    HttpResponse<String> made =
        post(
            "/api/tokens",
            "{\"label\":\"the barn's switch\",\"role\":\"helper\"}",
            "Cookie",
            cookie.substring(0, cookie.indexOf(';')),
            "X-CSRF-Token",
            JSON.readTree(owner.body()).path("csrfToken").asText());
    JsonNode token = JSON.readTree(made.body());
    return new Token(token.path("id").asText(), token.path("secret").asText());
  }

  private HttpResponse<String> post(String path, String body, String... headers) throws Exception {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + page.port() + path))
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body));
    return http.send(
        headers.length == 0 ? request.build() : request.headers(headers).build(),
        BodyHandlers.ofString());
  }

  private Settings settings() throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of("examples/shed.toml")).replace("port = 8420", "port = 0")
            + """

            [broker]
            host = "127.0.0.1"
            port = %d

            [mqtt]
            publish = true
            commands = true
            """
                .formatted(mosquitto.port()));
    Problems problems = new Problems();
    return SettingsReader.read(file, problems)
        .orElseThrow(() -> new AssertionError(problems.list().toString()));
  }
}
