package rindward.controller.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Splits one line into fields. A line is a row: a stray quote spoils its own line and never the
 * lines after it.
 */
final class CsvLine {
  private final char delimiter;
  private final CSVFormat quoted;

  CsvLine(char delimiter) {
    this.delimiter = delimiter;
    this.quoted =
        CSVFormat.DEFAULT.builder().setDelimiter(delimiter).setIgnoreSurroundingSpaces(true).get();
  }

  /** Returns the fields without spaces around them. */
  List<String> split(String line) throws MalformedRow {
    List<String> fields = new ArrayList<>();
    if (line.indexOf('"') >= 0) {
      for (String field : splitQuoted(line)) {
        fields.add(field.strip());
      }
      return fields;
    }
    int start = 0;
    for (int end = line.indexOf(delimiter); end >= 0; end = line.indexOf(delimiter, start)) {
      fields.add(line.substring(start, end).strip());
      start = end + 1;
    }
    fields.add(line.substring(start).strip());
    return fields;
  }

  private CSVRecord splitQuoted(String line) throws MalformedRow {
    try (CSVParser parser = CSVParser.parse(line, quoted)) {
      return parser.iterator().next();
    } catch (IOException | UncheckedIOException e) {
      throw new MalformedRow("a quote was opened or closed in the wrong place");
    }
  }
}
