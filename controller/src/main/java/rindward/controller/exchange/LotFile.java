package rindward.controller.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import rindward.controller.journal.Entry;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.FieldTexts;
import rindward.controller.journal.Misstated;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.store.EntryJson;

/**
 * Lots as a file that any spreadsheet opens: one thing that was said a line, in UTF-8, the columns
 * named in the first line and in any order. Written and read again, it says the same; what was
 * corrected or taken back is written as it stands now. Line breaks inside a text are written {@code
 * \n}, so that a line is a row and a stray quote spoils no other.
 */
public final class LotFile {
  private static final CSVFormat CSV = CSVFormat.DEFAULT.builder().setRecordSeparator("").get();

  /** What a newer version said stands here byte for byte; there is no such column without any. */
  private static final String AS_WRITTEN = "as_written";

  private LotFile() {}

  /**
   * A row that could be read.
   *
   * @param line line of the file, from 1
   */
  public record Row(long line, Entry entry) {}

  /** What a file says, good rows and bad ones, each in the order of the file. */
  public record Content(List<Row> rows, List<RejectedRow> rejected) {}

  /** Returns the whole file for everything that stands about lots. */
  public static String write(List<Recorded> standing) {
    Set<Long> unread = new HashSet<>();
    for (Recorded recorded : standing) {
      if (recorded.entry() instanceof NewerEntry) {
        unread.add(recorded.id());
      }
    }
    List<String> columns = new ArrayList<>(EntryKinds.COLUMNS);
    if (!unread.isEmpty()) {
      columns.add(AS_WRITTEN);
    }
    StringBuilder text = new StringBuilder(String.join(",", columns)).append('\n');
    for (Recorded recorded : standing) {
      Map<String, String> row = row(recorded, unread.contains(recorded.id()));
      if (!row.isEmpty()) {
        Object[] values =
            columns.stream()
                .map(column -> Cell.written(escaped(row.getOrDefault(column, ""))))
                .toArray();
        text.append(CSV.format(values)).append('\n');
      }
    }
    return text.toString();
  }

  private static Map<String, String> row(Recorded recorded, boolean isUnread) {
    if (recorded.entry() instanceof NewerEntry newer) {
      return newer.lots().contains(newer.subject())
          ? Map.of(
              "kind",
              newer.kind(),
              "lot",
              newer.subject(),
              "at",
              newer.at().toString(),
              AS_WRITTEN,
              newer.body())
          : Map.of();
    }
    return recorded.entry() instanceof OfLot entry && !isUnread ? EntryKinds.row(entry) : Map.of();
  }

  /**
   * Reads a file.
   *
   * @param zone whose days and local times are meant
   * @param cropKey from a name of a type, as people call it, to its key in the crop guide
   * @throws RecordingException if it cannot be read or names a column that does not exist
   */
  public static Content read(Path file, ZoneId zone, UnaryOperator<String> cropKey)
      throws RecordingException {
    try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return read(reader.lines().toList(), zone, cropKey);
    } catch (RecordingException e) {
      throw new RecordingException(file + ": " + e.getMessage());
    } catch (CharacterCodingException e) {
      throw new RecordingException(file + " was not UTF-8 text but it must be; save it as UTF-8");
    } catch (NoSuchFileException e) {
      throw new RecordingException("there is no file " + file);
    } catch (IOException | UncheckedIOException e) {
      throw new RecordingException(file + " could not be read as UTF-8 text: " + e.getMessage());
    }
  }

  private static Content read(List<String> lines, ZoneId zone, UnaryOperator<String> cropKey)
      throws RecordingException {
    List<Row> rows = new ArrayList<>();
    List<RejectedRow> rejected = new ArrayList<>();
    List<String> header = List.of();
    for (int i = 0; i < lines.size(); i++) {
      String line = i == 0 ? withoutMark(lines.get(i)) : lines.get(i);
      if (line.isBlank()) {
        continue;
      }
      try {
        List<String> values = split(line);
        if (header.isEmpty()) {
          header = header(values);
        } else {
          Map<String, String> fields = fields(header, values);
          rows.add(new Row(i + 1L, entry(fields, zone, cropKey)));
        }
      } catch (DateTimeException e) {
        rejected.add(new RejectedRow(i + 1L, "at must be a time such as 2026-10-03T14:30:00Z"));
      } catch (MalformedRow | Misstated e) {
        rejected.add(new RejectedRow(i + 1L, String.valueOf(e.getMessage())));
      }
    }
    return new Content(rows, rejected);
  }

  private static Entry entry(Map<String, String> fields, ZoneId zone, UnaryOperator<String> cropKey)
      throws Misstated {
    String written = fields.getOrDefault(AS_WRITTEN, "");
    if (!written.isEmpty()) {
      Instant at = Instant.parse(fields.getOrDefault("at", ""));
      return EntryJson.taken(fields.getOrDefault("lot", ""), at, written);
    }
    Map<String, String> said = new LinkedHashMap<>(fields);
    said.remove(AS_WRITTEN);
    return EntryKinds.fromTexts(new FieldTexts(said, zone, cropKey));
  }

  private static List<String> header(List<String> values) throws RecordingException {
    List<String> header = new ArrayList<>();
    for (String value : values) {
      String column = value.strip().toLowerCase(Locale.ROOT);
      try {
        if (!column.equals(AS_WRITTEN)) {
          EntryKinds.checkColumn(column);
        }
      } catch (Misstated e) {
        throw new RecordingException(e.sentence());
      }
      header.add(column);
    }
    return header;
  }

  private static Map<String, String> fields(List<String> header, List<String> values)
      throws MalformedRow {
    if (values.size() > header.size()) {
      throw new MalformedRow(
          "the line had " + values.size() + " fields but the header names " + header.size());
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (int i = 0; i < values.size(); i++) {
      fields.put(header.get(i), unescaped(Cell.typed(values.get(i))));
    }
    return fields;
  }

  private static List<String> split(String line) throws MalformedRow {
    try (CSVParser parser = CSVParser.parse(line, CSVFormat.DEFAULT)) {
      return parser.iterator().next().toList();
    } catch (IOException | UncheckedIOException e) {
      throw new MalformedRow("a quote was opened or closed in the wrong place");
    }
  }

  private static String withoutMark(String line) {
    return line.startsWith("\uFEFF") ? line.substring(1) : line;
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
  }

  private static String unescaped(String text) {
    if (text.indexOf('\\') < 0) {
      return text;
    }
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\\' || i + 1 == text.length()) {
        plain.append(c);
        continue;
      }
      char next = text.charAt(++i);
      plain.append(next == 'n' ? '\n' : next == 'r' ? '\r' : next);
    }
    return plain.toString();
  }
}
