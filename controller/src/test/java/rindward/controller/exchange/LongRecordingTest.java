package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rindward.controller.ledger.Run;

/** Recordings of many blocks, in whatever order a logger writes them. */
class LongRecordingTest {
  private static final int ROWS = 20_000;

  @TempDir private Path folder;

  private enum Order {
    OLDEST_FIRST,
    NEWEST_FIRST,
    SHUFFLED,
    TWO_LOGGERS_ONE_AFTER_THE_OTHER
  }

  @ParameterizedTest
  @EnumSource(Order.class)
  void everyRowIsThereOnce_andOfEqualTimesTheLastInTheFile(Order order) throws Exception {
    Random random = new Random(20_261_201);
    List<RecordedSample> rows = new ArrayList<>();
    for (int i = 0; i < ROWS; i++) {
      long second = order == Order.TWO_LOGGERS_ONE_AFTER_THE_OTHER ? i % (ROWS / 2) * 10L : i * 10L;
      long jitter = random.nextInt(20) == 0 ? random.nextInt(30) : 0;
      rows.add(
          new RecordedSample(
              1_790_000_000_000L + (second + jitter) * 1_000,
              random.nextInt(160_000) - 60_000,
              random.nextInt(100_001)));
    }
    if (order == Order.NEWEST_FIRST) {
      Collections.reverse(rows);
    } else if (order == Order.SHUFFLED) {
      Collections.shuffle(rows, random);
    }
    TreeMap<Long, RecordedSample> expected = new TreeMap<>();
    rows.forEach(row -> expected.put(row.atMillis(), row));

    Recording recording = read(rows);

    assertThat(recording.rows()).isEqualTo(ROWS);
    assertThat(samples(recording, Long.MIN_VALUE, Long.MAX_VALUE))
        .containsExactlyElementsOf(expected.values());
    assertThat(recording.firstMillis()).isEqualTo(expected.firstKey());
    assertThat(recording.lastMillis()).isEqualTo(expected.lastKey());
    long from = recording.firstMillis() + 50_000_000;
    assertThat(samples(recording, from, from + 7_000_000))
        .containsAll(expected.subMap(from, from + 7_000_000).values());
  }

  @Test
  void theUsualFormOfATime_isTheInstantThatTheStandardLibraryReads() {
    Random random = new Random(7);
    TimeFormat iso = TimeFormat.of("iso", ZoneOffset.UTC);
    for (int i = 0; i < 10_000; i++) {
      Instant instant = Instant.ofEpochSecond(random.nextInt(Integer.MAX_VALUE));
      assertThat(iso.toMillis(instant.toString(), TimeFormat.NO_ROW_BEFORE))
          .isEqualTo(instant.toEpochMilli());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-02-30T12:00:00Z", "2026-13-01T12:00:00Z", "2026-01-01T24:00:01Z",
        "2026-01-01T12:60:00Z", "2026-01-01T12:00:0oZ", "2026/01/01T12:00:00Z"
      })
  void aDayOrTimeThatIsNone_isRefused(String text) {
    TimeFormat iso = TimeFormat.of("iso", ZoneOffset.UTC);
    assertThatThrownBy(() -> iso.toMillis(text, TimeFormat.NO_ROW_BEFORE))
        .isInstanceOf(DateTimeException.class);
  }

  private Recording read(List<RecordedSample> rows) throws IOException, RecordingException {
    StringBuilder text = new StringBuilder("time,temperature,humidity\n");
    for (RecordedSample row : rows) {
      text.append(Instant.ofEpochMilli(row.atMillis()))
          .append(
              String.format(
                  Locale.ROOT,
                  ",%.3f,%.3f%n",
                  row.temperatureMilliC() / 1000.0,
                  row.humidityMilliPct() / 1000.0));
    }
    return RecordingReader.read(
        Files.writeString(folder.resolve("log.csv"), text),
        new RecordingFormat(
            Columns.parse("time=time,temperature=temperature,humidity=humidity"),
            List.of(),
            TimeFormat.of("iso", ZoneOffset.UTC),
            ',',
            false,
            false));
  }

  private static List<RecordedSample> samples(Recording recording, long from, long to) {
    List<Run> runs = new ArrayList<>();
    recording.forEach(from, to, runs::add);
    List<RecordedSample> samples = new ArrayList<>();
    for (Run run : runs) {
      for (int i = 0; i < run.count(); i++) {
        samples.add(
            new RecordedSample(
                run.startMillis() + (long) run.stepMillis() * i,
                run.temperatureMilliC()[i],
                run.humidityMilliPct()[i]));
      }
    }
    return samples;
  }
}
