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
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.dashboard.signin.SignIn;

/** Signing in as somebody does who should not: guessed, forged, oversized, malformed. */
class SignInRefusalTest {
  private static final String WREN = ServedShed.signInOf("Wren");

  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  @Test
  void aGuessedCodeMakesNobodyOwnerAndGuessingIsSlow() {
    int looked = 0;
    for (int i = 0; i < 500; i++) {
      int status = served.setUp("AAAAA-%05d".formatted(i)).statusCode();
      looked += status == 403 ? 1 : 0;
      assertThat(status).isIn(403, 429);
      time.advance(Duration.ofSeconds(1));
    }
    assertThat(looked).isLessThan(18);
    assertThat(served.people().people()).isEmpty();
  }

  @Test
  void aWrongNameAndAWrongPasswordLookAlike() {
    served.setUp(served.code());
    HttpResponse<String> wrongName =
        served.client().post("/api/sign-in", "{\"name\":\"Rook\",\"password\":\"a russet gourd\"}");
    HttpResponse<String> wrongPassword =
        served.client().post("/api/sign-in", "{\"name\":\"Wren\",\"password\":\"a green gourd\"}");
    assertThat(wrongName.statusCode()).isEqualTo(401);
    assertThat(wrongPassword.body()).isEqualTo(wrongName.body());
    assertThat(served.client().post("/api/sign-in", WREN.replace("Wren", " wREN ")).statusCode())
        .isEqualTo(200);
  }

  @Test
  void tenThousandAttemptsFromOneAddressGetAFewGuessesAndWriteAFewLines() {
    served.setUp(served.code());
    int looked = 0;
    Client client = served.client();
    for (int i = 0; i < 10_000; i++) {
      HttpResponse<String> answer = guess(client, i);
      if (answer.statusCode() == 401) {
        looked++;
      } else {
        assertThat(answer.statusCode()).isEqualTo(429);
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
      }
      time.advance(Duration.ofSeconds(1));
    }
    // 8 free ones, 10 while the wait doubles, then one in a quarter of an hour.
    assertThat(looked).isBetween(25, 30);
    assertThat(served.people().audit(Long.MAX_VALUE, 100)).hasSizeLessThan(5);
    assertThat(served.client().post("/api/sign-in", WREN).statusCode()).isEqualTo(429);
    time.advance(Duration.ofMinutes(16));
    assertThat(served.client().post("/api/sign-in", WREN).statusCode()).isEqualTo(200);
  }

  @Test
  void ofManyAttemptsAtOnce_noMoreAreLookedAt_thanOneAfterTheOther() throws Exception {
    served.setUp(served.code());
    ExecutorService crowd = Executors.newFixedThreadPool(15);
    try {
      List<Callable<Integer>> guesses =
          IntStream.range(0, 15)
              .<Callable<Integer>>mapToObj(i -> () -> guess(served.client(), i).statusCode())
              .toList();
      int looked = 0;
      for (Future<Integer> status : crowd.invokeAll(guesses)) {
        looked += status.get() == 401 ? 1 : 0;
      }
      assertThat(looked).isLessThanOrEqualTo(8);
    } finally {
      crowd.shutdownNow();
    }
  }

  @Test
  void aDeviceWhereSomebodyHasSignedInBeforeIsNotLockedOutByAStrangersTries() {
    Client owner = served.owner();
    owner.post("/api/sign-out", "");
    for (int i = 0; i < 30; i++) {
      guess(served.client(), i);
    }
    assertThat(served.client().post("/api/sign-in", WREN).statusCode()).isEqualTo(429);
    assertThat(
            served.client().with("Cookie", owner.cookie()).post("/api/sign-in", WREN).statusCode())
        .isEqualTo(200);
    Client forged = served.client().with("Cookie", "rindward-device=" + "A".repeat(43));
    assertThat(forged.post("/api/sign-in", WREN).statusCode()).isEqualTo(429);
  }

  @Test
  void aKnownDeviceThatGuessesHasToWaitToo() {
    Client owner = served.owner();
    owner.post("/api/sign-out", "");
    int looked = 0;
    for (int i = 0; i < 30; i++) {
      Client lost = served.client().with("Cookie", owner.cookie());
      looked += guess(lost, i).statusCode() == 401 ? 1 : 0;
    }
    assertThat(looked).isEqualTo(8);
  }

  @Test
  void aPasswordDrawnAtTheMachineItselfLiftsTheWaiting() {
    served.setUp(served.code());
    for (int i = 0; i < 30; i++) {
      guess(served.client(), i);
    }
    String drawn =
        new SignIn(served.people(), time, ServedShed.CHEAP).drawPassword("Wren").orElseThrow();
    assertThat(
            served
                .client()
                .post("/api/sign-in", WREN.replace("a russet gourd", drawn))
                .statusCode())
        .isEqualTo(200);
  }

  @Test
  void aChangeWithoutASessionIsRefused() {
    served.setUp(served.code());
    assertThat(served.client().post("/api/tokens", "{}").statusCode()).isEqualTo(401);
    assertThat(served.client().put("/api/people/Rook", "{}").statusCode()).isEqualTo(401);
    assertThat(served.client().delete("/api/people/Wren").statusCode()).isEqualTo(401);
    assertThat(served.client().get("/api/audit").statusCode()).isEqualTo(401);
    assertThat(served.client().get("/api/now").statusCode()).as("reading is open").isEqualTo(200);
  }

  @Test
  void eachRoleMayDoWhatItMayAndNoMore() {
    Client owner = served.owner();
    served.add(owner, "Rook", "helper");
    served.add(owner, "Finch", "panelist");
    for (String name : List.of("Rook", "Finch")) {
      Client other = served.signIn(name);
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
    Client owner = served.owner();
    served.add(owner, "Rook", "helper");
    served.add(owner, "Finch", "panelist");
    served.restart(false);
    for (String path : List.of("/api/now", "/api/live", "/metrics")) {
      assertThat(served.client().get(path).statusCode()).as(path).isEqualTo(401);
    }
    assertThat(served.client().get("/early.js").statusCode()).isEqualTo(200);
    assertThat(served.client().get("/").statusCode()).isEqualTo(200);
    assertThat(served.signIn("Rook").get("/api/now").statusCode()).isEqualTo(200);
    assertThat(served.signIn("Finch").get("/api/now").statusCode()).isEqualTo(403);
  }

  @Test
  void aForgedChangeIsRefused() {
    Client owner = served.owner();
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
    assertThat(served.people().tokens()).allMatch(t -> t.isSession());
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
    served.setUp(served.code());
    HttpResponse<String> answer = served.client().post("/api/sign-in", body);
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).endsWith(".").doesNotContain("jackson", "Exception", "rindward");
  }

  @Test
  void anOversizedBodyIsRefused() {
    String large = "{\"name\":\"" + "x".repeat(70_000) + "\",\"password\":\"a russet gourd\"}";
    assertThat(served.client().post("/api/sign-in", large).statusCode()).isEqualTo(413);
    String deep = "[".repeat(30_000);
    assertThat(served.client().post("/api/sign-in", deep).statusCode()).isEqualTo(400);
    String longName = "{\"name\":\"" + "x".repeat(101) + "\",\"password\":\"a russet gourd\"}";
    assertThat(detail(served.client().post("/api/sign-in", longName)))
        .isEqualTo("name was 101 characters long but it must be at most 100.");
  }

  @Test
  void anOversizedBodyThatDoesNotSayItsLengthIsRefusedToo() throws IOException {
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.dashboard().port())) {
      OutputStream out = socket.getOutputStream();
      String head =
          "POST /api/sign-in HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
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
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), served.dashboard().port())) {
      OutputStream out = socket.getOutputStream();
      String head =
          "POST /api/tastings/x/end HTTP/1.1\r\nHost: localhost\r\nContent-Length: 2\r\n\r\n";
      out.write(head.getBytes(StandardCharsets.UTF_8));
      InputStream in = socket.getInputStream();
      socket.setSoTimeout(300);
      assertThatThrownBy(in::read).as("waits").isInstanceOf(SocketTimeoutException.class);
      out.write("{}".getBytes(StandardCharsets.UTF_8));
      out.write(
          "GET /api/nothing HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n"
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
        served
            .client()
            .post(
                "/api/set-up",
                "{\"code\":\"%s\",\"name\":\"%s\",\"password\":\"a russet gourd\"}"
                    .formatted(served.code(), name));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).startsWith("name was not a name");
  }

  private static HttpResponse<String> guess(Client client, int number) {
    return client.post(
        "/api/sign-in", "{\"name\":\"Wren\",\"password\":\"guess number %d\"}".formatted(number));
  }
}
