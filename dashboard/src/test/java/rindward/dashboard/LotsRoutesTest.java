package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import java.net.http.HttpResponse;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading lots, and saying something of them, as a program meets it. */
class LotsRoutesTest {
  private static final String ENTRIES = "/api/lots/entries";
  private static final String CULL =
      "{'kind':'culled','lots':['K4T'],'fields':{'count':'2','cause':'soft'}}";

  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  private final InventedShed shed = served.shed();
  private Client owner;
  private int keys;

  @BeforeEach
  void signIn() {
    owner = served.owner();
  }

  @Test
  void lots_comeInPagesThatSayHowManyThereAre() {
    HttpResponse<String> page = owner.get("/api/lots?from=1&size=1");
    assertThat(json(page).get("total").asInt()).isEqualTo(3);
    assertThat(json(page).get("lots").findValuesAsText("code")).containsExactly("K4T");
  }

  @Test
  void lot_carriesItsVersionAsItsTag() {
    HttpResponse<String> lot = owner.get("/api/lots/k4t");
    assertThat(lot.headers().firstValue("ETag")).contains("\"K4T-12\"");
    assertThat(owner.get("/api/lots/none").statusCode()).isEqualTo(404);
  }

  @Test
  void entry_isKeptWithWhoAndWhen() {
    HttpResponse<String> answer = say(CULL.replace("'lots'", "'agoSeconds':3600,'lots'"));
    assertThat(answer.statusCode()).isEqualTo(201);
    assertThat(json(answer).at("/lots/0/fruits/sound").asInt()).isEqualTo(44);
    InventedLots.Said said = shed.lotDesk().said().get(0);
    assertThat(said.change().by()).isEqualTo("Wren");
    assertThat(said.at()).isEqualTo(time.instant().minusSeconds(3600));
    assertThat(served.people().audit(Long.MAX_VALUE, 1).get(0).what())
        .isEqualTo("said of K4T: culled");
  }

  @Test
  void entry_sentAgainUnderTheSameKey_isKeptOnceAndAnsweredTheSame() {
    owner.with("Idempotency-Key", "key-of-the-phone");
    HttpResponse<String> first = owner.post(ENTRIES, quoted(CULL));
    HttpResponse<String> again = owner.post(ENTRIES, quoted(CULL));
    assertThat(again.body()).isEqualTo(first.body());
    assertThat(shed.lotDesk().said()).hasSize(1);
  }

  @Test
  void entry_onALotThatHasChangedSince_isRefusedUntilSomebodyHasLooked() {
    shed.lotDesk().weighElsewhere("K4T");
    owner.with("If-Match", "\"K4T-12\"");
    HttpResponse<String> refused = say(CULL);
    assertThat(refused.statusCode()).isEqualTo(412);
    assertThat(detail(refused))
        .contains("somebody else has changed K4T since you looked (then at version '12')");
    assertThat(shed.lotDesk().said()).hasSize(1);

    owner.with("If-Match", json(owner.get("/api/lots/K4T")).at("/lot/version").asText());
    assertThat(say(CULL).statusCode()).as("not a tag").isEqualTo(400);
    owner.with("If-Match", owner.get("/api/lots/K4T").headers().firstValue("ETag").orElseThrow());
    assertThat(say(CULL).statusCode()).isEqualTo(201);
  }

  @Test
  void severalLots_moveTogetherOrNotAtAll() {
    shed.lotDesk().weighElsewhere("D1");
    String move = "{'kind':'moved','lots':['K4T','D1'],'fields':{'place':'porch'}}";
    owner.with("If-Match", "\"K4T-12\", \"D1-12\"");
    assertThat(say(move).statusCode()).isEqualTo(412);
    assertThat(shed.lotDesk().said()).hasSize(1);

    owner.with("If-Match", null);
    HttpResponse<String> moved = say(move);
    assertThat(json(moved).get("entries")).hasSize(2);
    assertThat(json(moved).at("/warnings/0").asText()).startsWith("There is no probe in porch");
    assertThat(json(moved).get("lots").findValuesAsText("place")).containsOnly("porch");
  }

  @Test
  void entry_isCorrectedAndTakenBack() {
    long entry = json(say(CULL)).at("/entries/0").asLong();
    owner.with("Idempotency-Key", "key-of-a-correction");
    HttpResponse<String> corrected =
        owner.put(ENTRIES + "/" + entry, quoted("{'fields':{'count':'5'}}"));
    assertThat(json(corrected).at("/lots/0/fruits/sound").asInt()).isEqualTo(41);
    owner.with("Idempotency-Key", "key-of-an-undo");
    HttpResponse<String> back =
        owner.post("/api/lots/withdrawals", quoted("{'entries':[%d]}".formatted(entry)));
    assertThat(json(back).at("/lots/0/fruits/sound").asInt()).isEqualTo(46);
    assertThat(shed.lotDesk().said()).isEmpty();
    owner.with("Idempotency-Key", "key-of-another-undo");
    assertThat(owner.post("/api/lots/withdrawals", "{\"entries\":[999]}").statusCode())
        .isEqualTo(404);
    assertThat(owner.put(ENTRIES + "/first", "{\"fields\":{}}").statusCode()).isEqualTo(404);
  }

  @Test
  void entry_thatContradicts_isRefusedInTheControllersWords() {
    HttpResponse<String> refused = say(CULL.replace("'2'", "'99'"));
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/problem+json");
    assertThat(detail(refused)).isEqualTo("count was '99' but only 46 are left.");
  }

  @Test
  void entry_ofSomebodyWhoMayNot_isRefused() {
    assertThat(served.client().post(ENTRIES, quoted(CULL)).statusCode()).isEqualTo(401);
    served.add(owner, "Finch", "panelist");
    Client finch = served.signIn("Finch");
    finch.with("Idempotency-Key", "key-of-a-taster");
    assertThat(finch.post(ENTRIES, quoted(CULL)).statusCode()).isEqualTo(403);
    assertThat(finch.put(ENTRIES + "/7", "{\"fields\":{}}").statusCode()).isEqualTo(403);
    assertThat(finch.post("/api/lots/withdrawals", "{\"entries\":[7]}").statusCode())
        .isEqualTo(403);
    owner.with("X-CSRF-Token", "made up");
    assertThat(say(CULL).statusCode()).isEqualTo(403);
    assertThat(shed.lotDesk().said()).isEmpty();
  }

  @Test
  void scriptInATextField_comesBackAsTheTextItIs() {
    String note = "{'kind':'noted','lots':['K4T'],'fields':{'note':'<script>alert(1)</script>'}}";
    assertThat(say(note).statusCode()).isEqualTo(201);
    HttpResponse<String> lot = owner.get("/api/lots/K4T");
    assertThat(lot.headers().firstValue("Content-Type").orElseThrow())
        .startsWith("application/json");
    assertThat(json(lot).at("/story/0/fields/note").asText())
        .isEqualTo("<script>alert(1)</script>");
  }

  @Test
  void whatIsTooLarge_isRefused() {
    assertThat(say(CULL.replace("soft", "x".repeat(2_001))).statusCode()).isEqualTo(400);
    assertThat(say(CULL.replace("soft", "x".repeat(70_000))).statusCode()).isEqualTo(413);
    String lots = "'K4T',".repeat(201).replaceAll(",$", "");
    assertThat(detail(say(CULL.replace("'K4T'", lots)))).contains("1 to 200 lots");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'kind':'culled','fields':{}}|lots was missing or too long",
        "{'kind':'culled','lots':[],'fields':{}}|lots was missing or too long",
        "{'kind':'culled','lots':['K4T']}|fields was missing or too long",
        "{'lots':['K4T'],'fields':{}}|kind was missing",
        "{'kind':'culled','lots':['K4T'],'fields':{'count':null}}|count was missing",
        "{'kind':'culled','lots':[null],'fields':{}}|lots was missing",
        "{'kind':'culled','lots':['K4T'],'fields':{},'agoSeconds':-5}|agoSeconds was '-5'",
        "{'kind':'culled','lots':['K4T'],'fields':{},'agoSeconds':5,'at':'2026-10-03T09:00:00Z'}"
            + "|at and agoSeconds were both given",
        "{'kind':'culled','lots':['K4T'],'fields':{},'who':'me'}|is not known here",
        "{'kind':'weighed','lots':['K4T'],'fields':{}}|weight_g was ''",
      })
  void entry_lackingSomething_saysWhat(String body, String part) {
    HttpResponse<String> refused = say(body);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(detail(refused)).contains(part).endsWith(".").doesNotContain("Exception");
  }

  @Test
  void entry_withoutAKey_isRefused() {
    owner.with("Idempotency-Key", null);
    assertThat(detail(owner.post(ENTRIES, quoted(CULL)))).startsWith("Idempotency-Key was ''");
  }

  @ParameterizedTest
  @CsvSource({
    "/api/lots?size=0,400",
    "/api/lots?size=501,400",
    "/api/lots?from=-1,400",
    "/api/lots/..%2f..%2fetc,404",
    "/api/lots/%3Cscript%3E,404",
    "/api/lots/none/air,404",
    "/api/lots/K4T/air?slots=many,400",
  })
  void aQuestionThatMakesNoSenseIsRefused(String path, int status) {
    HttpResponse<String> refused = owner.get(path);
    assertThat(refused.statusCode()).isIn(status, 400);
    assertThat(refused.body()).doesNotContain("\tat ", "Exception", "<script");
  }

  private HttpResponse<String> say(String body) {
    owner.with("Idempotency-Key", "key-of-a-test-" + ++keys);
    return owner.post(ENTRIES, quoted(body));
  }

  private static String quoted(String body) {
    return body.replace('\'', '"');
  }
}
