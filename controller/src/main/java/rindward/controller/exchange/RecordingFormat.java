package rindward.controller.exchange;

import java.util.List;

/**
 * How a logger writes its file.
 *
 * @param columns which columns are used
 * @param filters a row is used if all of them keep it
 * @param time how times are written
 * @param delimiter what stands between fields
 * @param decimalComma whether numbers are written 20,5
 * @param fahrenheit whether temperatures are in degrees F
 */
public record RecordingFormat(
    Columns columns,
    List<RowFilter> filters,
    TimeFormat time,
    char delimiter,
    boolean decimalComma,
    boolean fahrenheit) {

  public RecordingFormat {
    filters = List.copyOf(filters);
    if (delimiter == '"' || delimiter == '\n' || delimiter == '\r') {
      throw new IllegalArgumentException(
          "delimiter must be a character such as ',' or ';', not a quote or a line end");
    }
    if (decimalComma && delimiter == ',') {
      throw new IllegalArgumentException(
          "delimiter was ',' but with a decimal comma it must be another character, such as ';'");
    }
  }

  /** Tells whether the columns can be found only in a header. */
  boolean needsHeader() {
    Column humidity = columns.humidity();
    return columns.time().isNamed()
        || columns.temperature().isNamed()
        || (humidity != null && humidity.isNamed())
        || filters.stream().anyMatch(filter -> filter.column().isNamed());
  }
}
