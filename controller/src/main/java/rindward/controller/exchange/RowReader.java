package rindward.controller.exchange;

import java.time.DateTimeException;
import java.util.List;
import rindward.hardware.Thousandths;

/** Turns the fields of one row into a sample, or says why it cannot. Not thread-safe. */
final class RowReader {
  private static final double COLDEST_C = -60;
  private static final double WARMEST_C = 100;
  // The last millisecond of the year 9999; sums of such times cannot overflow.
  private static final long LATEST_MILLIS = 253_402_300_799_999L;

  private final RecordingFormat format;
  private final int time;
  private final int temperature;
  private final int humidity;
  private final int[] filtered;
  private long previousMillis = TimeFormat.NO_ROW_BEFORE;

  /** Finds the columns below {@code header}, which is empty where all are given by number. */
  RowReader(RecordingFormat format, List<String> header) throws RecordingException {
    this.format = format;
    Columns columns = format.columns();
    Column humidityColumn = columns.humidity();
    time = find(columns.time(), header);
    temperature = find(columns.temperature(), header);
    humidity = humidityColumn == null ? -1 : find(humidityColumn, header);
    filtered = new int[format.filters().size()];
    for (int i = 0; i < filtered.length; i++) {
      filtered[i] = find(format.filters().get(i).column(), header);
    }
  }

  /** Tells whether neither the time nor the temperature of a first row can be read. */
  boolean isHeader(List<String> fields) {
    return !readable(() -> time(fields)) && !readable(() -> temperature(fields));
  }

  /** Tells whether the filters keep this row. */
  boolean keeps(List<String> fields) throws MalformedRow {
    for (int i = 0; i < filtered.length; i++) {
      if (!field(fields, filtered[i]).equals(format.filters().get(i).value())) {
        return false;
      }
    }
    return true;
  }

  RecordedSample read(List<String> fields) throws MalformedRow {
    long atMillis = time(fields);
    RecordedSample sample = new RecordedSample(atMillis, temperature(fields), humidity(fields));
    previousMillis = atMillis;
    return sample;
  }

  private long time(List<String> fields) throws MalformedRow {
    String text = field(fields, time);
    try {
      long millis = format.time().toMillis(text, previousMillis);
      if (Math.abs(millis) <= LATEST_MILLIS) {
        return millis;
      }
    } catch (DateTimeException | NumberFormatException e) {
      // The sentence below says all there is to say.
    }
    throw new MalformedRow("time was '" + text + "' but it must be " + format.time().expected());
  }

  private int temperature(List<String> fields) throws MalformedRow {
    String text = field(fields, temperature);
    double given = number(text);
    double temperatureC = format.fahrenheit() ? (given - 32) / 1.8 : given;
    if (!(COLDEST_C <= temperatureC && temperatureC <= WARMEST_C)) {
      throw new MalformedRow(
          "temperature was '"
              + text
              + "' but it must be "
              + aNumber()
              + " in "
              + (format.fahrenheit() ? "-76..212 F" : "-60..100 C"));
    }
    return Thousandths.of(temperatureC);
  }

  private int humidity(List<String> fields) throws MalformedRow {
    if (humidity < 0) {
      return Thousandths.NONE;
    }
    String text = field(fields, humidity);
    if (text.isEmpty()) {
      return Thousandths.NONE;
    }
    double percent = number(text);
    if (!(0 <= percent && percent <= 100)) {
      throw new MalformedRow(
          "humidity was '" + text + "' but it must be " + aNumber() + " in 0..100 %");
    }
    return Thousandths.of(percent);
  }

  private String aNumber() {
    return format.decimalComma() ? "a number with a decimal comma" : "a number";
  }

  /** Returns NaN for text that is not a plain decimal number. */
  private double number(String text) {
    char point = format.decimalComma() ? ',' : '.';
    for (int i = 0; i < text.length(); i++) {
      if (!isDigitOf(text, i, point)) {
        return Double.NaN;
      }
    }
    try {
      return Double.parseDouble(text.replace(point, '.'));
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private static boolean isDigitOf(String number, int i, char point) {
    char c = number.charAt(i);
    return ('0' <= c && c <= '9') || c == point || "+-eE".indexOf(c) >= 0;
  }

  private static String field(List<String> fields, int index) throws MalformedRow {
    if (index >= fields.size()) {
      throw new MalformedRow(
          "the row has " + fields.size() + " fields but field " + (index + 1) + " is needed");
    }
    return fields.get(index);
  }

  private static int find(Column column, List<String> header) throws RecordingException {
    int index = column.indexIn(header);
    if (index < 0) {
      throw new RecordingException(
          "there is no column '"
              + column.text()
              + "'; the header has: "
              + String.join(", ", header));
    }
    return index;
  }

  private static boolean readable(Attempt attempt) {
    try {
      attempt.run();
      return true;
    } catch (MalformedRow e) {
      return false;
    }
  }

  private interface Attempt {
    void run() throws MalformedRow;
  }
}
