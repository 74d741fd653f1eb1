package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import io.javalin.router.ParsedEndpoint;
import io.javalin.security.Roles;
import java.io.InputStream;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.dashboard.signin.Access;

/** The description of the API says what the server does, route by route and field by field. */
class OpenApiTest {
  private static final Set<String> METHODS = Set.of("GET", "POST", "PUT", "DELETE");
  private static final Set<String> THE_SITE =
      Stream.concat(
              Stream.of("/<path>"),
              PageManifest.parse(SiteSource.OWN.text(PageManifest.FILE)).pages().stream()
                  .map(SitePage::address))
          .map(address -> "GET " + address)
          .collect(Collectors.toSet());

  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  private final InventedShed shed = served.shed();
  private JsonNode api;
  private Client owner;

  @BeforeEach
  void start() throws Exception {
    shed.show(InventedShed.damp(time.instant()));
    shed.alarms().begin();
    try (InputStream file = Dashboard.class.getResourceAsStream("openapi.json")) {
      api = JsonMapper.builder().build().readTree(file);
    }
    owner = served.owner();
  }

  @Test
  void everyRouteIsDescribedWithWhoMayCallItAndNoOther() {
    Map<String, String> real = new TreeMap<>();
    for (ParsedEndpoint parsed : served.dashboard().endpoints()) {
      String route = parsed.endpoint.method.name() + " " + parsed.endpoint.path;
      if (METHODS.contains(parsed.endpoint.method.name()) && !THE_SITE.contains(route)) {
        Roles roles = parsed.endpoint.metadata(Roles.class);
        assertThat(roles).as("who may call " + route).isNotNull();
        assertThat(roles.getRoles()).as(route).hasSize(1);
        Access access = (Access) roles.getRoles().iterator().next();
        real.put(route, access.name().toLowerCase(Locale.ROOT));
      }
    }
    Map<String, String> described = new TreeMap<>();
    api.get("paths")
        .fields()
        .forEachRemaining(
            path ->
                path.getValue()
                    .fields()
                    .forEachRemaining(
                        operation ->
                            described.put(
                                operation.getKey().toUpperCase(Locale.ROOT) + " " + path.getKey(),
                                operation.getValue().get("x-access").asText())));
    assertThat(described).isEqualTo(real);
  }

  @Test
  void everyReadingAnswersAsDescribed() {
    for (String path :
        List.of(
            "/api/now",
            "/api/rooms/Curing%20room/climate",
            "/api/rooms/Curing%20room/switching",
            "/api/rooms/Curing%20room/marks",
            "/api/lots",
            "/api/lots/k4t",
            "/api/lots/k4t/air",
            "/api/tastings",
            "/api/tastings/first%20frost",
            "/api/tastings/first%20frost/kitchen",
            "/api/taste/secret-of-Ash-0123456789",
            "/api/varieties",
            "/api/shed",
            "/api/record",
            "/api/alarms",
            "/api/alarms/history",
            "/api/alarms/rules",
            "/api/me",
            "/api/tokens",
            "/api/people",
            "/api/audit")) {
      String template =
          path.replace("Curing%20room", "{room}")
              .replace("k4t", "{code}")
              .replace("first%20frost", "{name}")
              .replace("secret-of-Ash-0123456789", "{secret}");
      check("get", template, owner.get(path), "200");
    }
  }

  @Test
  void everyChangeAnswersAsDescribed() {
    owner.with("Idempotency-Key", "key-of-this-test");
    String until = time.instant().plusSeconds(900).toString();
    String command = "{\"room\":\"Curing room\",\"kind\":\"heater\",\"on\":true,\"until\":\"%s\"}";
    check(
        "post",
        "/api/shed/commands",
        owner.post("/api/shed/commands", command.formatted(until)),
        "201");
    check("get", "/api/shed", owner.get("/api/shed"), "200");
    String quiet = "{\"alarm\":\"too-dry@Keeping room\",\"answer\":\"shelved\",\"until\":\"%s\"}";
    check(
        "post",
        "/api/alarms/answers",
        owner.post("/api/alarms/answers", quiet.formatted(until)),
        "201");
    String work = "{\"room\":\"Curing room\",\"until\":\"%s\"}";
    check("post", "/api/alarms/work", owner.post("/api/alarms/work", work.formatted(until)), "201");
    owner.with("Idempotency-Key", null);
    check(
        "delete",
        "/api/shed/commands/{room}/{kind}",
        owner.delete("/api/shed/commands/Curing%20room/heater"),
        "200");
    check(
        "post",
        "/api/tokens",
        owner.post("/api/tokens", "{\"label\":\"display\",\"role\":\"helper\"}"),
        "201");
    check(
        "put",
        "/api/people/{name}",
        owner.put("/api/people/Rook", "{\"role\":\"helper\",\"password\":\"a russet gourd\"}"),
        "200");
    check("delete", "/api/people/{name}", owner.delete("/api/people/Rook"), "204");
  }

  @Test
  void everythingSaidOfLotsAnswersAsDescribed() {
    owner.with("Idempotency-Key", "key-of-a-move");
    String move = "{\"kind\":\"moved\",\"lots\":[\"K4T\"],\"fields\":{\"place\":\"porch\"}}";
    HttpResponse<String> moved = owner.post("/api/lots/entries", move);
    check("post", "/api/lots/entries", moved, "201");
    long entry = Client.json(moved).at("/entries/0").asLong();
    owner.with("Idempotency-Key", "key-of-a-correction");
    check(
        "put",
        "/api/lots/entries/{id}",
        owner.put("/api/lots/entries/" + entry, "{\"fields\":{\"place\":\"cellar\"}}"),
        "200");
    owner.with("Idempotency-Key", "key-of-an-undo");
    check(
        "post",
        "/api/lots/withdrawals",
        owner.post("/api/lots/withdrawals", "{\"entries\":[" + entry + "]}"),
        "201");
    owner.with("Idempotency-Key", null);
  }

  @Test
  void everythingSaidOfTastingsAndVarietiesAnswersAsDescribed() {
    owner.with("Idempotency-Key", "key-of-a-tasting");
    String plan =
        "{\"name\":\"late\",\"samples\":[{\"lot\":\"K4T\"},{\"lot\":\"D1\"}],\"tasters\":[\"Ash\"]}";
    check("post", "/api/tastings", owner.post("/api/tastings", plan), "201");
    String cooked = "{\"sample\":\"K4T\",\"minutes\":45,\"seeds\":\"full\",\"freeLiquid\":true}";
    check(
        "post",
        "/api/tastings/{name}/cooked",
        owner.post("/api/tastings/first%20frost/cooked", cooked),
        "201");
    owner.with("Idempotency-Key", "key-of-a-fruit-not-cooked");
    check(
        "delete",
        "/api/tastings/{name}/cooked/{sample}/{fruit}",
        owner.delete("/api/tastings/first%20frost/cooked/K4T/1"),
        "200");
    String cup = "{\"code\":\"417\",\"answers\":{\"liking\":7},\"goodFor\":[\"pie\"]}";
    String sheet = "/api/taste/" + InventedTastings.secret("Ash");
    check("post", "/api/taste/{secret}", owner.post(sheet, cup), "201");
    String end = "/api/tastings/first%20frost/end";
    check("post", "/api/tastings/{name}/end", owner.post(end, "{}"), "200");
    String decision = "{\"crop\":\"kabocha\",\"variety\":\"Frostgate\",\"decision\":\"drop\"}";
    check(
        "post",
        "/api/varieties/decisions",
        owner.post("/api/varieties/decisions", decision),
        "201");
    owner.with("Idempotency-Key", null);
  }

  @Test
  void whatIsReadOffAPictureAnswersAsDescribed() {
    byte[] seen = SeenSquares.jpeg(SeenSquares.beside("K4T"));
    String picture = "{\"jpeg\":\"" + Base64.getEncoder().encodeToString(seen) + "\"}";
    check("post", "/api/squares", owner.post("/api/squares", picture), "200");
  }

  @Test
  void everyRefusalIsAProblemAsDescribed() {
    Client nobody = served.client();
    for (HttpResponse<String> refused :
        List.of(
            nobody.get("/api/people"),
            nobody.get("/api/rooms/nowhere/climate"),
            nobody.get("/api/rooms/Curing%20room/climate?slots=0"),
            nobody.post("/api/sign-in", "{"))) {
      JsonNode schema = api.at("/components/schemas/Problem");
      assertThat(ApiSchema.faults(Client.json(refused), schema, api)).isEmpty();
    }
  }

  @Test
  void theDescriptionIsServed() {
    assertThat(Client.json(served.client().get("/api/openapi.json"))).isEqualTo(api);
  }

  private void check(String method, String path, HttpResponse<String> answer, String status) {
    assertThat(Integer.toString(answer.statusCode())).as(path + answer.body()).isEqualTo(status);
    JsonNode response = api.get("paths").get(path).get(method).get("responses").get(status);
    assertThat(response).as(method + " " + path).isNotNull();
    JsonNode schema = response.at("/content/application~1json/schema");
    if (schema.isMissingNode()) {
      assertThat(answer.body()).isEmpty();
    } else {
      assertThat(ApiSchema.faults(Client.json(answer), schema, api))
          .as(method + " " + path)
          .isEmpty();
    }
  }
}
