package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tastings and varieties as a program, a taster's phone and a stranger meet them. */
class TastingsRoutesTest {
  private static final String SHEET = "/api/taste/" + InventedTastings.secret("Ash");
  private static final String CUP = "{\"code\":\"417\",\"answers\":{\"liking\":8}}";

  private final SetTime time = new SetTime(Instant.parse("2026-12-03T18:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  private final InventedShed shed = served.shed();
  private Client owner;
  private Client phone;

  @BeforeEach
  void signIn() {
    owner = served.owner();
    phone = served.client();
  }

  @Test
  void taster_scoresByTheLinkAlone_onceForEachKey() {
    phone.with("Idempotency-Key", "key-of-the-phone");
    assertThat(phone.post(SHEET, CUP).statusCode()).isEqualTo(201);
    HttpResponse<String> again = phone.post(SHEET, CUP);
    assertThat(json(again).at("/cups/0/answers/liking").asInt()).isEqualTo(8);
    assertThat(shed.tastings().sayings()).isEqualTo(1);
  }

  @Test
  void taster_seesNothingOfWhatIsInACup() {
    assertThat(phone.get(SHEET).body())
        .contains("417")
        .doesNotContain("K4T", "D1", "Winterglut", "Striped Otter", "Kabocha");
    assertThat(phone.get("/api/tastings/first%20frost").body())
        .contains("417")
        .doesNotContain("K4T", "Winterglut");
  }

  @Test
  void taster_cannotScoreAnothersCup() {
    phone.with("Idempotency-Key", "key-of-the-phone");
    HttpResponse<String> refused = phone.post(SHEET, CUP.replace("417", "350"));
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(detail(refused)).contains("it must be a cup of yours");
  }

  @Test
  void wrongLink_opensNothing() {
    assertThat(phone.get("/api/taste/secret-of-nobody").statusCode()).isEqualTo(404);
    phone.with("Idempotency-Key", "key-of-the-phone");
    assertThat(phone.post("/api/taste/secret-of-nobody", CUP).statusCode()).isEqualTo(404);
  }

  @Test
  void pageOfAnotherSite_cannotScore() {
    phone.with("Idempotency-Key", "key-of-the-phone").with("Origin", "http://elsewhere.example");
    assertThat(phone.post(SHEET, CUP).statusCode()).isEqualTo(403);
  }

  @Test
  void onlyTheOwner_plansClosesDecidesAndSeesWhatIsInTheCups() {
    served.add(owner, "Rook", "helper");
    Client rook = served.signIn("Rook");
    rook.with("Idempotency-Key", "key-of-a-helper");
    for (Client other : List.of(rook, phone)) {
      int no = other == rook ? 403 : 401;
      assertThat(other.get("/api/tastings/first%20frost/kitchen").statusCode()).isEqualTo(no);
      assertThat(other.post("/api/tastings", "{}").statusCode()).isEqualTo(no);
      assertThat(other.post("/api/tastings/first%20frost/end", "{}").statusCode()).isEqualTo(no);
      String cooked = "/api/tastings/first%20frost/cooked";
      assertThat(other.post(cooked, "{}").statusCode()).isEqualTo(no);
      assertThat(other.delete(cooked + "/K4T/1").statusCode()).isEqualTo(no);
      assertThat(other.post("/api/varieties/decisions", "{}").statusCode()).isEqualTo(no);
    }
  }

  @Test
  void secretOfALink_isNotWrittenIntoTheRecordOfChanges() {
    owner.with("Idempotency-Key", "key-of-the-owner").post(SHEET, CUP);
    assertThat(served.people().audit(Long.MAX_VALUE, 1).get(0).what())
        .isEqualTo("scored a cup by a taster's link");
  }

  @Test
  void closedTasting_isReadableAndTakesNoMore() {
    owner.with("Idempotency-Key", "key-of-a-score").post(SHEET, CUP);
    owner.with("Idempotency-Key", "key-of-closing");
    HttpResponse<String> closed = owner.post("/api/tastings/first%20frost/end", "{}");
    assertThat(json(closed).at("/result/samples/0/variety").asText()).isEqualTo("Winterglut");
    phone.with("Idempotency-Key", "key-that-is-late");
    assertThat(phone.post(SHEET, CUP).statusCode()).isEqualTo(409);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{}",
        "{\"code\":\"417\"}",
        "{\"code\":\"417\",\"answers\":{\"liking\":null}}",
        "{\"code\":\"417\",\"answers\":{\"liking\":7.5}}",
        "{\"code\":\"417\",\"answers\":{},\"agoSeconds\":-1}",
        "{\"code\":\"41741741741\",\"answers\":{}}"
      })
  void malformedScores_areRefused(String body) {
    phone.with("Idempotency-Key", "key-of-the-phone");
    assertThat(phone.post(SHEET, body).statusCode()).isEqualTo(400);
  }

  @Test
  void decision_isNotedWithWhoMadeIt() {
    owner.with("Idempotency-Key", "key-of-a-decision");
    String decision =
        "{\"crop\":\"kabocha\",\"variety\":\"Frostgate\",\"decision\":\"try-again\","
            + "\"reason\":\"sow in April\"}";
    HttpResponse<String> after = owner.post("/api/varieties/decisions", decision);
    assertThat(json(after).at("/varieties/0/decided/reason").asText()).isEqualTo("sow in April");
    assertThat(served.people().audit(Long.MAX_VALUE, 1).get(0).what())
        .isEqualTo("decided on Frostgate: try-again");
  }
}
