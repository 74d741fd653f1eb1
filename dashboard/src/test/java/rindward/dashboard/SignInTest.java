package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignIn;

/** Signing in as a person does it, and as somebody does who should not. */
class SignInTest {
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
  void theFirstStartGivesACodeThatMakesTheOwnerOnce() {
    assertThat(codes).singleElement().asString().matches("[A-Z0-9]{5}-[A-Z0-9]{5}");
    assertThat(json(client().get("/api/me")).get("needsOwner").asBoolean()).isTrue();

    HttpResponse<String> made = setUp(codes.get(0).toLowerCase());
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("rindward=")
        .contains("HttpOnly", "SameSite=Strict", "Path=/");
    JsonNode me = json(client().signedInBy(made).get("/api/me"));
    assertThat(me.get("name").asText()).isEqualTo("Wren");
    assertThat(me.get("role").asText()).isEqualTo("owner");
    assertThat(me.get("needsOwner").asBoolean()).isFalse();

    assertThat(setUp(codes.get(0)).statusCode()).isEqualTo(403);
    dashboard.announceCode(codes::add);
    assertThat(codes).hasSize(1);
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
  void aPasswordIsKeptOnlyAsAHash() {
    setUp(codes.get(0));
    Person wren = people.people().get(0);
    assertThat(wren.passwordHash()).startsWith("$2a$").doesNotContain("russet");
    assertThat(wren.toString()).isEqualTo("Wren (owner)");
    assertThat(people.tokens().get(0).hash()).hasSize(43);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "short     | The password is too short: it must have at least 10 characters.",
        "REPEATED  | The password is too long: it must have at most 72 bytes."
      })
  void anUnusablePasswordIsRefusedWithTheReason(String password, String sentence) {
    String used = password.equals("REPEATED") ? "ü".repeat(40) : password;
    HttpResponse<String> answer =
        client()
            .post(
                "/api/set-up",
                "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"%s\"}"
                    .formatted(codes.get(0), used));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).isEqualTo(sentence);
    assertThat(setUp(codes.get(0)).statusCode()).as("the code is still good").isEqualTo(200);
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

  @Test
  void aSessionEndsWhenItIsSignedOutAndAfterASeason() {
    Client owner = owner();
    Client phone = signIn("Wren");
    assertThat(owner.post("/api/sign-out", "{}").statusCode()).isEqualTo(204);
    assertThat(owner.get("/api/tokens").statusCode()).as("replayed cookie").isEqualTo(401);
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(200);
    time.advance(Duration.ofDays(121));
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(401);
  }

  @Test
  void aSessionOutlivesARestart() {
    Client phone = owner();
    int port = dashboard.port();
    dashboard.close();
    dashboard = dashboard(true, port);
    dashboard.start();
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(200);
    assertThat(phone.post("/api/sign-out", "{}").statusCode()).isEqualTo(204);
  }

  @Test
  void aNewPasswordEndsEveryOtherSession() {
    Client desk = owner();
    Client phone = signIn("Wren");
    assertThat(desk.put("/api/me/password", "{\"old\":\"wrong\",\"wanted\":\"0123456789\"}"))
        .satisfies(answer -> assertThat(answer.statusCode()).isEqualTo(403));
    String change = "{\"old\":\"a russet gourd\",\"wanted\":\"a paler gourd\"}";
    assertThat(desk.put("/api/me/password", change).statusCode()).isEqualTo(204);
    assertThat(desk.get("/api/tokens").statusCode()).isEqualTo(200);
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(401);
    assertThat(client().post("/api/sign-in", WREN).statusCode()).isEqualTo(401);
  }

  @Test
  void signingInAgainUnderTheSameKeyOpensASessionEachTime() {
    setUp(codes.get(0));
    Client phone = client().with("Idempotency-Key", "key-00001");
    for (int i = 0; i < 2; i++) {
      assertThat(phone.post("/api/sign-in", WREN).headers().firstValue("Set-Cookie")).isPresent();
    }
  }

  @Test
  void anApiTokenWorksUntilItIsEndedAndIsShownOnce() {
    Client owner = owner();
    JsonNode made =
        json(owner.post("/api/tokens", "{\"label\":\"barn display\",\"role\":\"helper\"}"));
    Client program = client().with("Authorization", "Bearer " + made.get("secret").asText());
    assertThat(json(program.get("/api/me")).get("role").asText()).isEqualTo("helper");
    assertThat(program.get("/api/people").statusCode()).isEqualTo(403);
    assertThat(owner.get("/api/tokens").body()).doesNotContain(made.get("secret").asText());

    assertThat(owner.delete("/api/tokens/" + made.get("id").asText()).statusCode()).isEqualTo(204);
    HttpResponse<String> ended = program.get("/api/now");
    assertThat(ended.statusCode()).isEqualTo(401);
    assertThat(detail(ended)).contains("was ended");
    assertThat(owner.delete("/api/tokens/nothing").statusCode()).isEqualTo(404);
  }

  @Test
  void thereIsAlwaysAnOwner() {
    Client owner = owner();
    HttpResponse<String> removed = owner.delete("/api/people/Wren");
    assertThat(removed.statusCode()).isEqualTo(409);
    assertThat(detail(removed)).isEqualTo("Wren is the only owner; make another one first.");
    assertThat(
            owner.put("/api/people/wren", "{\"role\":\"helper\",\"password\":null}").statusCode())
        .isEqualTo(409);
  }

  @Test
  void whoChangedWhatIsRecorded() {
    Client owner = owner();
    add(owner, "Rook", "helper");
    owner.delete("/api/people/Rook");
    assertThat(json(owner.get("/api/audit?size=2")).findValuesAsText("what"))
        .containsExactly("removed Rook", "made Rook helper, with a new password");
    JsonNode last = json(owner.get("/api/audit?size=2")).get(1);
    JsonNode before = json(owner.get("/api/audit?before=" + last.get("id").asLong()));
    assertThat(before.get(0).get("what").asText()).startsWith("became the owner");
    assertThat(detail(owner.get("/api/audit?size=-1")))
        .isEqualTo("size was '-1' but it must be a number above zero.");
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
        new DashboardSettings("127.0.0.1", port, openReading),
        shed.desks(people),
        () -> "",
        time,
        new SignIn(people, time, CHEAP),
        Duration.ofSeconds(15));
  }
}
