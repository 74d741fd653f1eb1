package rindward.controller.broadcast;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.InputStream;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What is published is what the schema says: every field, no other, each of its type. */
class MessageSchemaTest {
  private static final Instant AT = Instant.parse("2026-12-11T02:10:00Z");
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private JsonNode schemas;

  @BeforeEach
  void read() throws Exception {
    try (InputStream file = Broadcast.class.getResourceAsStream("messages.schema.json")) {
      schemas = JSON.readTree(file).get("$defs");
    }
  }

  @Test
  void aRoomFullOfValues_andOneWithoutAny() throws Exception {
    RoomMessage full =
        new RoomMessage(
            AT,
            "storage",
            "storage",
            11.5,
            61.0,
            11.2,
            10.0,
            13.0,
            50.0,
            70.0,
            List.of(new RoomMessage.OutputMessage("storage-heater", "heater", true, "Heating.")),
            List.of("Probe storage-door last answered 40 s ago."));
    RoomMessage bare =
        new RoomMessage(
            AT, "cellar", "storage", null, null, null, null, null, null, null, List.of(),
            List.of());
    assertThat(faults(full, "room")).isEmpty();
    assertThat(faults(bare, "room")).isEmpty();
  }

  @Test
  void lots_andAlarms() throws Exception {
    LotsMessage lots =
        new LotsMessage(
            AT,
            List.of(
                new LotsMessage.LotMessage(
                    "KB1", "kabocha", "Winterglut", "storage", 40, "ready")));
    AlarmsMessage alarms =
        new AlarmsMessage(
            AT,
            List.of(
                new AlarmsMessage.AlarmMessage(
                    "too-dry@storage",
                    "Too dry",
                    "storage",
                    null,
                    "digest",
                    "unacknowledged",
                    AT,
                    "Fill the humidifier.")));
    assertThat(faults(lots, "lots")).isEmpty();
    assertThat(faults(alarms, "alarms")).isEmpty();
  }

  @Test
  void aMessageOfAnotherKind_isNoticed() throws Exception {
    assertThat(faults(new LotsMessage(AT, List.of()), "alarms")).isNotEmpty();
  }

  private List<String> faults(Object message, String schema) throws Exception {
    List<String> faults = new ArrayList<>();
    check("$", JSON.readTree(Broadcast.json(message)), schemas.get(schema), faults);
    return faults;
  }

  private static void check(String where, JsonNode value, JsonNode schema, List<String> faults) {
    if (schema.has("enum")) {
      if (!schema.get("enum").toString().contains(value.toString())) {
        faults.add(where + " was " + value);
      }
      return;
    }
    String type = value.getNodeType().name().toLowerCase(Locale.ROOT);
    String wanted = schema.get("type").toString().replace("integer", "number");
    if (!wanted.contains(type)) {
      faults.add(where + " was " + type + " but must be " + wanted);
    } else if (value.isArray()) {
      value.forEach(each -> check(where + "[]", each, schema.get("items"), faults));
    } else if (value.isObject()) {
      TreeSet<String> is = new TreeSet<>();
      value.fieldNames().forEachRemaining(is::add);
      TreeSet<String> must = new TreeSet<>();
      schema.get("required").forEach(name -> must.add(name.asText()));
      if (!is.equals(must)) {
        faults.add(where + " has " + is + " but must have " + must);
        return;
      }
      is.forEach(
          name ->
              check(
                  where + "." + name, value.get(name), schema.get("properties").get(name), faults));
    }
  }
}
