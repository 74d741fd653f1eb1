package rindward.dashboard;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Holds JSON against the part of JSON Schema that our description uses: references, types, objects
 * with all their fields, arrays, alternatives and enumerations.
 */
final class ApiSchema {
  private final JsonNode api;
  private final List<String> faults = new ArrayList<>();

  private ApiSchema(JsonNode api) {
    this.api = api;
  }

  /** Returns where a value is not as described; empty when it is. */
  static List<String> faults(JsonNode value, JsonNode schema, JsonNode api) {
    ApiSchema check = new ApiSchema(api);
    check.check("$", value, schema);
    return check.faults;
  }

  private void check(String where, JsonNode value, JsonNode schema) {
    if (schema.has("$ref")) {
      check(where, value, api.at(schema.get("$ref").asText().substring(1)));
    } else if (schema.has("anyOf")) {
      boolean fits = false;
      for (JsonNode each : schema.get("anyOf")) {
        fits |= faults(value, each, api).isEmpty();
      }
      require(fits, where + " fits nothing of " + schema);
    } else {
      checkType(where, value, schema);
    }
  }

  private void checkType(String where, JsonNode value, JsonNode schema) {
    Set<String> types = new TreeSet<>();
    JsonNode type = schema.path("type");
    if (type.isArray()) {
      type.forEach(each -> types.add(each.asText()));
    } else {
      types.add(type.asText());
    }
    require(types.contains(typeOf(value, types)), where + " was " + value + " but not " + types);
    if (schema.has("enum") && !value.isNull()) {
      require(contains(schema.get("enum"), value), where + " was " + value);
    }
    if (value.isObject() && schema.has("properties")) {
      checkFields(where, value, schema);
    }
    if (value.isArray() && schema.has("items")) {
      for (int i = 0; i < value.size(); i++) {
        check(where + "[" + i + "]", value.get(i), schema.get("items"));
      }
    }
  }

  private void checkFields(String where, JsonNode value, JsonNode schema) {
    JsonNode properties = schema.get("properties");
    value
        .fields()
        .forEachRemaining(
            field -> {
              JsonNode known = properties.get(field.getKey());
              if (known == null) {
                faults.add(where + "." + field.getKey() + " is not described");
              } else {
                check(where + "." + field.getKey(), field.getValue(), known);
              }
            });
    for (JsonNode needed : schema.get("required")) {
      require(value.has(needed.asText()), where + "." + needed.asText() + " is missing");
    }
  }

  private static String typeOf(JsonNode value, Set<String> wanted) {
    return switch (value.getNodeType()) {
      case OBJECT -> "object";
      case ARRAY -> "array";
      case STRING -> "string";
      case BOOLEAN -> "boolean";
      case NULL -> "null";
      case NUMBER -> value.isIntegralNumber() && !wanted.contains("number") ? "integer" : "number";
      default -> "unknown";
    };
  }

  private static boolean contains(JsonNode array, JsonNode value) {
    for (JsonNode each : array) {
      if (each.equals(value)) {
        return true;
      }
    }
    return false;
  }

  private void require(boolean holds, String fault) {
    if (!holds) {
      faults.add(fault);
    }
  }
}
