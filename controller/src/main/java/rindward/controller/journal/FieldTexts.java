package rindward.controller.journal;

import java.time.ZoneId;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What somebody says field by field: a line of a file of lots, or what a page sends.
 *
 * @param fields texts by column; a column that is missing or empty was not said
 * @param zone whose days and local times are meant
 * @param cropKey from a name of a type, as people call it, to its key in the crop guide
 */
public record FieldTexts(Map<String, String> fields, ZoneId zone, UnaryOperator<String> cropKey) {
  /** Returns the text as it stands; empty if none was given. */
  String text(String column) {
    return fields.getOrDefault(column, "");
  }
}
