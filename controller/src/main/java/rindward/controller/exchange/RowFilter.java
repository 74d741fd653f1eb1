package rindward.controller.exchange;

/**
 * Keeps the rows that have one value in one column, such as those of one probe of several.
 *
 * @param column where to look
 * @param value the text that must stand there, spaces around it aside
 */
public record RowFilter(Column column, String value) {

  /** Reads {@code 4=1} or {@code Probe=north wall}. */
  public static RowFilter parse(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw new IllegalArgumentException(
          "row filter was '" + text + "' but it must be a column and a value, such as 4=1");
    }
    return new RowFilter(new Column(text.substring(0, equals)), text.substring(equals + 1).strip());
  }
}
