package rindward.dashboard.lots;

import java.util.Map;
import rindward.dashboard.request.JsonBody;

/**
 * What a page sends to correct an entry.
 *
 * @param fields what it should have said, by the columns of a file of lots
 */
record FieldsRequest(Map<String, String> fields) {
  private static final int MOST_FIELDS = 40;
  private static final int LONGEST = 2_000;

  FieldsRequest {
    check(fields);
    fields = Map.copyOf(fields);
  }

  /**
   * Looks at the size of what was sent, before anybody reads it.
   *
   * @throws IllegalArgumentException naming the field
   */
  static void check(Map<String, String> fields) {
    if (fields == null || fields.size() > MOST_FIELDS) {
      throw new IllegalArgumentException(
          "fields was missing or too long but it must name at most " + MOST_FIELDS + " fields.");
    }
    fields.forEach(
        (name, value) -> {
          JsonBody.needed(name, "a name in fields", 40);
          JsonBody.needed(value, name, LONGEST);
        });
  }
}
