package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignIn;

/** Signing in as a person does it, and what follows from being who one is. */
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
  void whoForgotTheirPasswordGetsAnotherAtTheMachineAndSignsInWithIt() {
    Client owner = owner();
    assertThat(owner.get("/api/people").statusCode()).isEqualTo(200);

    // Another program at the same store, as the command is.
    String drawn = new SignIn(people, time, CHEAP).drawPassword("wren").orElseThrow();

    time.advance(Duration.ofSeconds(61));
    assertThat(owner.get("/api/people").statusCode()).isEqualTo(401);
    String body = "{\"name\":\"Wren\",\"password\":\"%s\"}";
    assertThat(client().post("/api/sign-in", body.formatted("a russet gourd")).statusCode())
        .isEqualTo(401);
    assertThat(client().post("/api/sign-in", body.formatted(drawn)).statusCode()).isEqualTo(200);
    assertThat(new SignIn(people, time, CHEAP).drawPassword("Rook")).isEmpty();
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
