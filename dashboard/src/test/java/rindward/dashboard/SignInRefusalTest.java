package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static rindward.dashboard.Client.detail;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.dashboard.signin.SignIn;

/** Signing in as somebody does who should not: guessed, forged, oversized, malformed. */
class SignInRefusalTest {
  private static final int CHEAP = 4;
  private static final String WREN = "{\"name\":\"Wren\",\"password\":\"a russet gourd\"}";

  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));
  private final InventedShed shed = new InventedShed(InventedShed.well(time.instant(), 27.4));
  private final RememberedSignIn people = new RememberedSignIn();
  private final List<String> codes = new ArrayList<>();
  private Dashboard dashboard = dashboard(true);

  @BeforeEach
  void start() {
    dashboard.start();
    dashboard.announceCode(codes::add);
  }

  @AfterEach
  void stop() {
    dashboard.close();
  }

  @Test
  void aGuessedCodeMakesNobodyOwnerAndGuessingIsSlow() {
    int looked = 0;
    for (int i = 0; i < 500; i++) {
      int status = setUp("AAAAA-%05d".formatted(i)).statusCode();
      looked += status == 403 ? 1 : 0;
      assertThat(status).isIn(403, 429);
      time.advance(Duration.ofSeconds(1));
    }
    assertThat(looked).isLessThan(18);
    assertThat(people.people()).isEmpty();
  }

  @Test
  void aWrongNameAndAWrongPasswordLookAlike() {
    setUp(codes.get(0));
    HttpResponse<String> wrongName =
        client().post("/api/sign-in", "{\"name\":\"Rook\",\"password\":\"a russet gourd\"}");
    HttpResponse<String> wrongPassword =
        client().post("/api/sign-in", "{\"name\":\"Wren\",\"password\":\"a green gourd\"}");
    assertThat(wrongName.statusCode()).isEqualTo(401);
    assertThat(wrongPassword.body()).isEqualTo(wrongName.body());
    assertThat(client().post("/api/sign-in", WREN.replace("Wren", " wREN ")).statusCode())
        .isEqualTo(200);
  }

  @Test
  void manyAttemptsFromOneAddressGetAFewGuessesAndWriteAFewLines() {
    setUp(codes.get(0));
    int looked = 0;
    Client client = client();
    for (int i = 0; i < 1_500; i++) {
      HttpResponse<String> answer = guess(client, i);
      if (answer.statusCode() == 401) {
        looked++;
      } else {
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
      }
      time.advance(Duration.ofSeconds(1));
    }
    // 8 free ones, and about 10 while the wait doubles.
    assertThat(looked).isBetween(15, 20);
    assertThat(people.audit(Long.MAX_VALUE, 100)).hasSizeLessThan(5);
    assertThat(client().post("/api/sign-in", WREN).statusCode()).isEqualTo(429);
    time.advance(Duration.ofMinutes(16));
    assertThat(client().post("/api/sign-in", WREN).statusCode()).isEqualTo(200);
  }

  @Test
  void aChangeWithoutASessionIsRefused() {
    setUp(codes.get(0));
    assertThat(client().post("/api/tokens", "{}").statusCode()).isEqualTo(401);
    assertThat(client().put("/api/people/Rook", "{}").statusCode()).isEqualTo(401);
    assertThat(client().delete("/api/people/Wren").statusCode()).isEqualTo(401);
    assertThat(client().get("/api/audit").statusCode()).isEqualTo(401);
    assertThat(client().get("/api/now").statusCode()).as("reading is open").isEqualTo(200);
  }

  @Test
  void eachRoleMayDoWhatItMayAndNoMore() {
    Client owner = owner();
    add(owner, "Rook", "helper");
    add(owner, "Finch", "panelist");
    for (String name : List.of("Rook", "Finch")) {
      Client other = signIn(name);
      assertThat(other.get("/api/people").statusCode()).isEqualTo(403);
      assertThat(other.get("/api/audit").statusCode()).isEqualTo(403);
      HttpResponse<String> promotion =
          other.put("/api/people/" + name, "{\"role\":\"owner\",\"password\":null}");
      assertThat(promotion.statusCode()).isEqualTo(403);
      HttpResponse<String> more =
          other.post("/api/tokens", "{\"label\":\"mine\",\"role\":\"owner\"}");
      assertThat(detail(more)).isEqualTo("A token cannot be allowed more than you are.");
      assertThat(other.get("/api/tokens").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void closedReadingNeedsSignInForEverythingButTheSiteItself() {
    Client owner = owner();
    add(owner, "Rook", "helper");
    add(owner, "Finch", "panelist");
    restart(false);
    for (String path : List.of("/api/now", "/api/live", "/metrics")) {
      assertThat(client().get(path).statusCode()).as(path).isEqualTo(401);
    }
    assertThat(client().get("/app.js").statusCode()).isEqualTo(200);
    assertThat(client().get("/").statusCode()).isEqualTo(200);
    assertThat(signIn("Rook").get("/api/now").statusCode()).isEqualTo(200);
    assertThat(signIn("Finch").get("/api/now").statusCode()).isEqualTo(403);
  }

  @Test
  void aForgedChangeIsRefused() {
    Client owner = owner();
    String token = "{\"label\":\"forged\",\"role\":\"owner\"}";
    assertThat(owner.with("Origin", "http://evil.example").post("/api/tokens", token).statusCode())
        .isEqualTo(403);
    owner.with("Origin", "null");
    assertThat(owner.post("/api/tokens", token).statusCode()).isEqualTo(403);
    owner.with("Origin", null).with("Sec-Fetch-Site", "cross-site");
    assertThat(owner.post("/api/tokens", token).statusCode()).isEqualTo(403);
    owner.with("Sec-Fetch-Site", null).with("Content-Type", "text/plain");
    assertThat(owner.post("/api/tokens", token).statusCode()).isEqualTo(415);
    owner.with("Content-Type", null).with("X-CSRF-Token", "made up");
    assertThat(owner.post("/api/tokens", token).statusCode()).isEqualTo(403);
    owner.with("X-CSRF-Token", null);
    assertThat(owner.post("/api/tokens", token).statusCode()).isEqualTo(403);
    assertThat(people.tokens()).allMatch(t -> t.isSession());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "null",
        "[]",
        "{",
        "\"text\"",
        "{\"name\":\"Wren\"}",
        "{\"name\":[\"Wren\"],\"password\":\"a russet gourd\"}",
        "{\"name\":17,\"password\":\"a russet gourd\"}",
        "{\"name\":\"Wren\",\"name\":\"Rook\",\"password\":\"a russet gourd\"}",
        "{\"name\":\"Wren\",\"password\":\"a russet gourd\",\"role\":\"owner\"}",
        "{\"name\":\"Wren\",\"password\":\"a russet gourd\"} {}"
      })
  void aMalformedBodyIsRefusedWithASentenceAndNoTrace(String body) {
    setUp(codes.get(0));
    HttpResponse<String> answer = client().post("/api/sign-in", body);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).endsWith(".").doesNotContain("jackson", "Exception", "rindward");
  }

  @Test
  void anOversizedBodyIsRefused() {
    String large = "{\"name\":\"" + "x".repeat(70_000) + "\",\"password\":\"a russet gourd\"}";
    assertThat(client().post("/api/sign-in", large).statusCode()).isEqualTo(413);
    String deep = "[".repeat(30_000);
    assertThat(client().post("/api/sign-in", deep).statusCode()).isEqualTo(400);
    String longName = "{\"name\":\"" + "x".repeat(101) + "\",\"password\":\"a russet gourd\"}";
    assertThat(detail(client().post("/api/sign-in", longName)))
        .isEqualTo("name was 101 characters long but it must be at most 100.");
  }

  @Test
  void anOversizedBodyThatDoesNotSayItsLengthIsRefusedToo() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), dashboard.port())) {
      OutputStream out = socket.getOutputStream();
      String head =
          "POST /api/sign-in HTTP/1.1\r\nHost: shed\r\nContent-Type: application/json\r\n"
              + "Transfer-Encoding: chunked\r\nConnection: close\r\n\r\n";
      out.write(head.getBytes(StandardCharsets.UTF_8));
      byte[] chunk = ("1000\r\n" + "x".repeat(4096) + "\r\n").getBytes(StandardCharsets.UTF_8);
      for (int i = 0; i < 20; i++) {
        out.write(chunk);
      }
      out.write("0\r\n\r\n".getBytes(StandardCharsets.UTF_8));
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 413 ").contains("at most 65536 bytes");
    }
  }

  /** The body comes in a packet of its own, after the answer could have gone. */
  @Test
  void aBodyThatNobodyWantedDoesNotCostTheNextRequestItsConnection() throws Exception {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), dashboard.port())) {
      OutputStream out = socket.getOutputStream();
      String head = "POST /api/tastings/x/end HTTP/1.1\r\nHost: shed\r\nContent-Length: 2\r\n\r\n";
      out.write(head.getBytes(StandardCharsets.UTF_8));
      InputStream in = socket.getInputStream();
      socket.setSoTimeout(300);
      assertThatThrownBy(in::read).as("waits").isInstanceOf(SocketTimeoutException.class);
      out.write("{}".getBytes(StandardCharsets.UTF_8));
      out.write(
          "GET /api/nothing HTTP/1.1\r\nHost: shed\r\nConnection: close\r\n\r\n"
              .getBytes(StandardCharsets.UTF_8));
      socket.setSoTimeout(10_000);
      String answers = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answers).startsWith("HTTP/1.1 415 ").contains("HTTP/1.1 404 ");
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"<script>alert(1)</script>", "../../etc/passwd", "a\\u0000b", " ", ""})
  void aNameThatIsNoNameIsRefused(String name) {
    HttpResponse<String> answer =
        client()
            .post(
                "/api/set-up",
                "{\"code\":\"%s\",\"name\":\"%s\",\"password\":\"a russet gourd\"}"
                    .formatted(codes.get(0), name));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).startsWith("name was not a name");
  }

  private HttpResponse<String> setUp(String code) {
    return anybody()
        .post(
            "/api/set-up",
            "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"a russet gourd\"}".formatted(code));
  }

  private Client owner() {
    return client().signedInBy(setUp(codes.get(0)));
  }

  private static void add(Client owner, String name, String role) {
    String body = "{\"role\":\"%s\",\"password\":\"a russet gourd\"}".formatted(role);
    assertThat(owner.put("/api/people/" + name, body).statusCode()).isEqualTo(200);
  }

  private Client signIn(String name) {
    return client().signedInBy(client().post("/api/sign-in", WREN.replace("Wren", name)));
  }

  private static HttpResponse<String> guess(Client client, int number) {
    return client.post(
        "/api/sign-in", "{\"name\":\"Wren\",\"password\":\"guess number %d\"}".formatted(number));
  }

  private Client anybody;

  private Client anybody() {
    if (anybody == null) {
      anybody = client();
    }
    return anybody;
  }

  private Client client() {
    return new Client(dashboard.port());
  }

  private void restart(boolean openReading) {
    dashboard.close();
    dashboard = dashboard(openReading);
    dashboard.start();
  }

  private Dashboard dashboard(boolean openReading) {
    return dashboard(openReading, 0);
  }

  private Dashboard dashboard(boolean openReading, int port) {
    return new Dashboard(
        new DashboardSettings("127.0.0.1", port, openReading, null),
        shed.desks(people),
        () -> "",
        time,
        new SignIn(people, time, CHEAP),
        Duration.ofSeconds(15));
  }
}
