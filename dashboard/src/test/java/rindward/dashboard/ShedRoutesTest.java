package rindward.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static rindward.dashboard.Client.detail;
import static rindward.dashboard.Client.json;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.dashboard.shed.ManualCommand;

/** Reading a room's past and switching by hand, as a program meets them. */
class ShedRoutesTest {
  private final SetTime time = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @RegisterExtension final ServedShed served = new ServedShed(time);

  private final InventedShed shed = served.shed();
  private Client owner;

  @BeforeEach
  void signIn() {
    owner = served.owner();
  }

  @Test
  void command_reachesTheShedWithWhoAndUntilWhen() {
    HttpResponse<String> answer = order("key-00001", "heater", "true", 15);
    assertThat(answer.statusCode()).isEqualTo(201);
    Instant until = time.instant().plusSeconds(900);
    assertThat(shed.parts().commands())
        .containsExactly(
            new ManualCommand("Curing room", "heater", true, until, "Wren", "key-00001"));
    assertThat(json(answer).at("/outputs/0/manual/by").asText()).isEqualTo("Wren");
    assertThat(served.people().audit(Long.MAX_VALUE, 1).get(0).what())
        .isEqualTo("switched the heater of Curing room on until 2026-10-03T09:30:30Z");
  }

  @Test
  void whatIsOnRecord_isHandedOver_andTheCopyOfEverythingToTheOwnerAlone() {
    HttpResponse<String> lots = owner.get("/api/record/lots.csv");
    assertThat(lots.headers().firstValue("Content-Type")).hasValue("text/csv; charset=utf-8");
    assertThat(lots.headers().firstValue("Content-Disposition").orElseThrow()).contains("lots.csv");
    assertThat(lots.body()).startsWith("kind,lots");
    assertThat(owner.get("/api/record/copy.db").body()).isEqualTo("a copy");
    assertThat(served.client().get("/api/record/copy.db").statusCode()).isEqualTo(401);
  }

  @Test
  void command_sentAgainUnderTheSameKey_isDoneOnceAndAnsweredTheSame() {
    HttpResponse<String> first = order("key-00001", "heater", "true", 15);
    HttpResponse<String> again = order("key-00001", "heater", "true", 15);
    assertThat(again.statusCode()).isEqualTo(201);
    assertThat(again.body()).isEqualTo(first.body());
    assertThat(again.headers().firstValue("Idempotent-Replayed")).contains("true");
    assertThat(shed.parts().commands()).hasSize(1);
    assertThat(
            served.people().audit(Long.MAX_VALUE, 9).stream()
                .filter(e -> e.what().contains("heater")))
        .hasSize(1);

    time.advance(Duration.ofHours(25));
    order("key-00002", "heater", "true", 15);
    assertThat(shed.parts().commands()).hasSize(1);
  }

  @Test
  void command_refusedByTheShed_saysWhyAndMayBeTriedAgain() {
    HttpResponse<String> refused = order("key-00001", "humidifier", "true", 15);
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(detail(refused)).startsWith("The humidifier stays off: the air is at 79 % already");
    assertThat(order("key-00001", "humidifier", "true", 15).headers().map())
        .doesNotContainKey("idempotent-replayed");
    assertThat(shed.parts().commands()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -5, 1_442, 100_000})
  void command_withoutAUsableEnd_isRefused(int minutes) {
    HttpResponse<String> refused = order("key-00001", "heater", "true", minutes);
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(detail(refused)).endsWith("it must be after now and at most 1440 minutes ahead.");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{'room':'Curing room','kind':'heater','on':true}"
            + "|until was missing but a manual command must have an end time.",
        "{'room':'Curing room','kind':'heater','until':'2026-10-03T09:30:00Z'}"
            + "|on was missing but it must be true or false.",
        "{'room':'Curing room','kind':'heater','on':'yes','until':'2026-10-03T09:30:00Z'}"
            + "|The field on is missing or of the wrong type.",
        "{'room':'Curing room','kind':'heater','on':true,'until':'soon'}"
            + "|The field until is missing or of the wrong type.",
      })
  void command_lackingSomething_saysWhat(String body, String sentence) {
    owner.with("Idempotency-Key", "key-00001");
    HttpResponse<String> refused = owner.post("/api/shed/commands", body.replace('\'', '"'));
    assertThat(refused.statusCode()).isEqualTo(400);
    assertThat(detail(refused)).isEqualTo(sentence);
  }

  @Test
  void command_withoutAKey_isRefused() {
    owner.with("Idempotency-Key", "short");
    assertThat(order(null, "heater", "true", 15).statusCode()).isEqualTo(400);
    owner.with("Idempotency-Key", null);
    assertThat(detail(order(null, "heater", "true", 15)))
        .isEqualTo("Idempotency-Key was '' but it must be 8 to 80 letters, figures, - or _.");
    assertThat(shed.parts().commands()).isEmpty();
  }

  @Test
  void command_underTheKeyOfAnother_isRefused_andTheFirstStands() {
    assertThat(order("key-00001", "heater", "true", 15).statusCode()).isLessThan(300);
    HttpResponse<String> other = order("key-00001", "heater", "false", 15);
    assertThat(other.statusCode()).isEqualTo(409);
    assertThat(detail(other)).startsWith("Idempotency-Key was used for another change already");
    assertThat(order("key-00001", "heater", "true", 15).headers().firstValue("Idempotent-Replayed"))
        .hasValue("true");
    assertThat(shed.parts().commands()).hasSize(1);
  }

  @Test
  void command_ofSomebodyWhoMayOnlyTaste_isRefused() {
    served.add(owner, "Finch", "panelist");
    Client finch = served.signIn("Finch");
    finch.with("Idempotency-Key", "key-00001");
    HttpResponse<String> refused = finch.post("/api/shed/commands", "{}");
    assertThat(refused.statusCode()).isEqualTo(403);
    assertThat(served.client().post("/api/shed/commands", "{}").statusCode()).isEqualTo(401);
    assertThat(shed.parts().commands()).isEmpty();
  }

  @Test
  void release_letsTheOutputRunByItself() {
    order("key-00001", "heater", "false", 15);
    HttpResponse<String> released = owner.delete("/api/shed/commands/Curing%20room/heater");
    assertThat(json(released).at("/outputs/0/manual").isNull()).isTrue();
  }

  @Test
  void samples_areAFileOfTheirOwnName() {
    HttpResponse<String> file =
        owner.get(
            "/api/rooms/Curing%20room/samples.csv"
                + "?from=2026-10-02T09:00:00Z&to=2026-10-02T09:20:00Z");
    assertThat(file.body())
        .isEqualTo(
            "time,temperature_C,relative_humidity_percent\r\n"
                + "2026-10-02T09:00:00Z,27.41,79.25\r\n"
                + "2026-10-02T09:10:00Z,27.41,\r\n");
    assertThat(file.headers().firstValue("Content-Disposition"))
        .contains("attachment; filename=\"Curing-room-2026-10-02.csv\"");
  }

  @ParameterizedTest
  @CsvSource({
    "/api/rooms/nowhere/climate,404",
    "/api/rooms/..%2f..%2fetc/climate,404",
    "/api/rooms/nowhere/samples.csv,404",
    "/api/rooms/%3Cscript%3E/switching,404",
    "/api/rooms/Curing%20room/climate?from=yesterday,400",
    "/api/rooms/Curing%20room/climate?from=2026-10-03T00:00:00Z&to=2026-10-02T00:00:00Z,400",
    "/api/rooms/Curing%20room/climate?from=2020-01-01T00:00:00Z,400",
    "/api/rooms/Curing%20room/climate?slots=2001,400",
    "/api/rooms/Curing%20room/climate?slots=many,400",
  })
  void aQuestionThatMakesNoSenseIsRefused(String path, int status) {
    HttpResponse<String> refused = owner.get(path);
    assertThat(refused.statusCode()).isIn(status, 400);
    assertThat(refused.body()).doesNotContain("\tat ", "Exception");
  }

  private HttpResponse<String> order(String key, String kind, String on, int minutes) {
    if (key != null) {
      owner.with("Idempotency-Key", key);
    }
    Instant until = time.instant().plus(Duration.ofMinutes(minutes));
    return owner.post(
        "/api/shed/commands",
        "{\"room\":\"Curing room\",\"kind\":\"%s\",\"on\":%s,\"until\":\"%s\"}"
            .formatted(kind, on, until));
  }
}
