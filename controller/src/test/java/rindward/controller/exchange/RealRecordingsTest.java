package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Reads recordings of a real room with four probes. They are not part of the project; {@code
 * -Drindward.recordings=FOLDER} says where they are, else this is skipped.
 */
class RealRecordingsTest {
  @ParameterizedTest
  @CsvSource({
    "location-a-01.csv, 1, 2046", "location-a-01.csv, 4, 2049",
    "location-a-60.csv, 2, 3261", "location-a-60.csv, 3, 3685"
  })
  void everyRowOfAProbe_isRead(String name, String probe, long rows) throws Exception {
    String folder = System.getProperty("rindward.recordings", "");
    Path file = Path.of(folder, name);
    assumeTrue(
        !folder.isEmpty() && Files.exists(file),
        "skipped: -Drindward.recordings must name the folder that holds " + name);

    Recording recording =
        RecordingReader.read(
            file,
            new RecordingFormat(
                Columns.parse("time=2,temperature=5,humidity=6"),
                List.of(RowFilter.parse("4=" + probe)),
                TimeFormat.of("epoch-millis", ZoneOffset.UTC),
                ',',
                false,
                false));

    assertThat(recording.rows()).isEqualTo(rows);
    assertThat(recording.rejectedRows()).isZero();
    assertThat(recording.headerLine()).isZero();
  }
}
