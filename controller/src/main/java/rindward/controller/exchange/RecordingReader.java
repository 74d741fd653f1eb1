package rindward.controller.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads a recording made by any logger: one row a line, in UTF-8. Columns named after a header are
 * looked up in the first line. Where all columns are numbers, a first line in which neither the
 * time nor the temperature can be read is a header too, and skipped. Empty lines are no rows.
 */
public final class RecordingReader {
  private static final int REASONS_KEPT = 20;
  private static final int ROWS_A_BLOCK = 4_096;

  private final RecordingFormat format;
  private final CsvLine csv;
  private final List<RecordedSample> samples = new ArrayList<>(ROWS_A_BLOCK);
  private final List<SampleBlock> blocks = new ArrayList<>();
  private final List<RejectedRow> rejected = new ArrayList<>();
  private @Nullable RowReader rows;
  private long line;
  private long used;
  private long headerLine;
  private long rejectedRows;

  private RecordingReader(RecordingFormat format) {
    this.format = format;
    this.csv = new CsvLine(format.delimiter());
  }

  /**
   * Returns what is recorded in {@code file}; possibly no row at all.
   *
   * @throws RecordingException if the file cannot be read or lacks a column
   */
  public static Recording read(Path file, RecordingFormat format) throws RecordingException {
    RecordingReader reader = new RecordingReader(format);
    try (BufferedReader lines = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      for (String text = lines.readLine(); text != null; text = lines.readLine()) {
        reader.take(text);
      }
    } catch (RecordingException e) {
      throw new RecordingException(file + ": " + e.getMessage());
    } catch (CharacterCodingException e) {
      throw new RecordingException(file + " was not UTF-8 text but it must be; save it as UTF-8");
    } catch (NoSuchFileException e) {
      throw new RecordingException("there is no file " + file);
    } catch (AccessDeniedException e) {
      throw new RecordingException(file + " may not be read by this user");
    } catch (IOException e) {
      throw new RecordingException(file + " could not be read: " + e.getMessage());
    }
    return reader.recording();
  }

  private Recording recording() {
    pack();
    return new Recording(blocks, used, headerLine, rejectedRows, rejected);
  }

  private void pack() {
    if (!samples.isEmpty()) {
      blocks.add(SampleBlock.of(samples));
      samples.clear();
    }
  }

  private void take(String text) throws RecordingException {
    line++;
    String row = line == 1 && text.startsWith("\uFEFF") ? text.substring(1) : text;
    if (row.isBlank()) {
      return;
    }
    try {
      List<String> fields = csv.split(row);
      RowReader reader = rows;
      if (reader == null) {
        reader = start(fields);
        rows = reader;
        if (headerLine > 0) {
          return;
        }
      }
      if (reader.keeps(fields)) {
        samples.add(reader.read(fields));
        used++;
        if (samples.size() == ROWS_A_BLOCK) {
          pack();
        }
      }
    } catch (MalformedRow e) {
      reject(e);
    }
  }

  private RowReader start(List<String> firstRow) throws RecordingException {
    boolean named = format.needsHeader();
    RowReader reader = new RowReader(format, named ? firstRow : List.of());
    if (named || reader.isHeader(firstRow)) {
      headerLine = line;
    }
    return reader;
  }

  private void reject(MalformedRow why) {
    rejectedRows++;
    if (rejected.size() < REASONS_KEPT) {
      rejected.add(new RejectedRow(line, String.valueOf(why.getMessage())));
    }
  }
}
