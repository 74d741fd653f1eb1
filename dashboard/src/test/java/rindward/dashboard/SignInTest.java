package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.dashboard.signin.Person;
import rindward.dashboard.signin.SignIn;

/** Signing in as a person does it, and what follows from being who one is. */
class SignInTest {
  private static final String WREN = ServedShed.signInOf("Wren");

  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  @Test
  void theFirstStartGivesACodeThatMakesTheOwnerOnce() {
    assertThat(served.codes()).singleElement().asString().matches("[A-Z0-9]{5}-[A-Z0-9]{5}");
    assertThat(json(served.client().get("/api/me")).get("needsOwner").asBoolean()).isTrue();

    HttpResponse<String> made = served.setUp(served.code().toLowerCase());
    assertThat(made.statusCode()).isEqualTo(200);
    assertThat(made.headers().firstValue("Set-Cookie").orElseThrow())
        .startsWith("rindward=")
        .contains("HttpOnly", "SameSite=Strict", "Path=/");
    JsonNode me = json(served.client().signedInBy(made).get("/api/me"));
    assertThat(me.get("name").asText()).isEqualTo("Wren");
    assertThat(me.get("role").asText()).isEqualTo("owner");
    assertThat(me.get("needsOwner").asBoolean()).isFalse();

    assertThat(served.setUp(served.code()).statusCode()).isEqualTo(403);
    served.dashboard().announceCode(served.codes()::add);
    assertThat(served.codes()).hasSize(1);
  }

  @Test
  void aPasswordIsKeptOnlyAsAHash() {
    served.setUp(served.code());
    Person wren = served.people().people().get(0);
    assertThat(wren.passwordHash()).startsWith("$2a$").doesNotContain("russet");
    assertThat(wren.toString()).isEqualTo("Wren (owner)");
    assertThat(served.people().tokens().get(0).hash()).hasSize(43);
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
        served
            .client()
            .post(
                "/api/set-up",
                "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"%s\"}"
                    .formatted(served.code(), used));
    assertThat(answer.statusCode()).isEqualTo(400);
    assertThat(detail(answer)).isEqualTo(sentence);
    assertThat(served.setUp(served.code()).statusCode())
        .as("the code is still good")
        .isEqualTo(200);
  }

  @Test
  void aSessionEndsWhenItIsSignedOutAndAfterASeason() {
    Client owner = served.owner();
    Client phone = served.signIn("Wren");
    assertThat(owner.post("/api/sign-out", "{}").statusCode()).isEqualTo(204);
    assertThat(owner.get("/api/tokens").statusCode()).as("replayed cookie").isEqualTo(401);
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(200);
    time.advance(Duration.ofDays(121));
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(401);
  }

  @Test
  void aSessionOutlivesARestart() {
    Client phone = served.owner();
    served.restart(true);
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(200);
    assertThat(phone.post("/api/sign-out", "{}").statusCode()).isEqualTo(204);
  }

  @Test
  void aNewPasswordEndsEveryOtherSession() {
    Client desk = served.owner();
    Client phone = served.signIn("Wren");
    assertThat(desk.put("/api/me/password", "{\"old\":\"wrong\",\"wanted\":\"0123456789\"}"))
        .satisfies(answer -> assertThat(answer.statusCode()).isEqualTo(403));
    String change = "{\"old\":\"a russet gourd\",\"wanted\":\"a paler gourd\"}";
    assertThat(desk.put("/api/me/password", change).statusCode()).isEqualTo(204);
    assertThat(desk.get("/api/tokens").statusCode()).isEqualTo(200);
    assertThat(phone.get("/api/tokens").statusCode()).isEqualTo(401);
    assertThat(served.client().post("/api/sign-in", WREN).statusCode()).isEqualTo(401);
  }

  @Test
  void signingInAgainUnderTheSameKeyOpensASessionEachTime() {
    served.setUp(served.code());
    Client phone = served.client().with("Idempotency-Key", "key-00001");
    for (int i = 0; i < 2; i++) {
      assertThat(phone.post("/api/sign-in", WREN).headers().firstValue("Set-Cookie")).isPresent();
    }
  }

  @Test
  void anApiTokenWorksUntilItIsEndedAndIsShownOnce() {
    Client owner = served.owner();
    JsonNode made =
        json(owner.post("/api/tokens", "{\"label\":\"barn display\",\"role\":\"helper\"}"));
    Client program = served.client().with("Authorization", "Bearer " + made.get("secret").asText());
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
    Client owner = served.owner();
    assertThat(owner.get("/api/people").statusCode()).isEqualTo(200);

    // Another program at the same store, as the command is.
    String drawn =
        new SignIn(served.people(), time, ServedShed.CHEAP).drawPassword("wren").orElseThrow();

    time.advance(Duration.ofSeconds(61));
    assertThat(owner.get("/api/people").statusCode()).isEqualTo(401);
    String body = "{\"name\":\"Wren\",\"password\":\"%s\"}";
    assertThat(served.client().post("/api/sign-in", body.formatted("a russet gourd")).statusCode())
        .isEqualTo(401);
    assertThat(served.client().post("/api/sign-in", body.formatted(drawn)).statusCode())
        .isEqualTo(200);
    assertThat(new SignIn(served.people(), time, ServedShed.CHEAP).drawPassword("Rook")).isEmpty();
  }

  @Test
  void thereIsAlwaysAnOwner() {
    Client owner = served.owner();
    HttpResponse<String> removed = owner.delete("/api/people/Wren");
    assertThat(removed.statusCode()).isEqualTo(409);
    assertThat(detail(removed)).isEqualTo("Wren is the only owner; make another one first.");
    assertThat(
            owner.put("/api/people/wren", "{\"role\":\"helper\",\"password\":null}").statusCode())
        .isEqualTo(409);
  }

  @Test
  void whoChangedWhatIsRecorded() {
    Client owner = served.owner();
    served.add(owner, "Rook", "helper");
    owner.delete("/api/people/Rook");
    assertThat(json(owner.get("/api/audit?size=2")).findValuesAsText("what"))
        .containsExactly("removed Rook", "made Rook helper, with a new password");
    JsonNode last = json(owner.get("/api/audit?size=2")).get(1);
    JsonNode before = json(owner.get("/api/audit?before=" + last.get("id").asLong()));
    assertThat(before.get(0).get("what").asText()).startsWith("became the owner");
    assertThat(detail(owner.get("/api/audit?size=-1")))
        .isEqualTo("size was '-1' but it must be a number above zero.");
  }
}
