package rindward.controller.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.hardware.Thousandths;

class RecordingReaderTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
  private static final Columns THREE = Columns.parse("time=1,temperature=2,humidity=3");

  @TempDir Path folder;

  @Test
  void rowsOfOneProbe_areSortedAndTheLastOfEqualTimesCounts() throws Exception {
    Recording recording =
        RecordingReader.read(
            resource("two-probes.csv"),
            format("time=2,temperature=5,humidity=6", "epoch-millis", RowFilter.parse("4=1")));

    assertThat(samples(recording))
        .containsExactly(
            new RecordedSample(1_790_000_000_000L, 20_480, 42_332),
            new RecordedSample(1_790_000_005_020L, 20_490, 42_360),
            new RecordedSample(1_790_000_010_045L, 20_500, 42_400),
            new RecordedSample(1_790_000_020_000L, 20_520, 42_500));
    assertThat(recording.rows()).isEqualTo(5);
    assertThat(recording.headerLine()).isZero();
    assertThat(recording.firstMillis()).isEqualTo(1_790_000_000_000L);
    assertThat(recording.lastMillis()).isEqualTo(1_790_000_020_000L);
  }

  @Test
  void malformedRows_areCountedWithLineAndReason_andOtherProbesAreNotJudged() throws Exception {
    Recording recording =
        RecordingReader.read(
            resource("two-probes.csv"),
            format("time=2,temperature=5,humidity=6", "epoch-millis", RowFilter.parse("4=1")));

    assertThat(recording.rejectedRows()).isEqualTo(2);
    assertThat(recording.rejected())
        .containsExactly(
            new RejectedRow(6, "temperature was '85.0x' but it must be a number in -60..100 C"),
            new RejectedRow(10, "the row has 3 fields but field 4 is needed"));
  }

  @Test
  void headerNames_semicolons_decimalCommas_fahrenheit_localTimes() throws Exception {
    Recording recording =
        RecordingReader.read(
            resource("semicolons.csv"),
            new RecordingFormat(
                Columns.parse("time=Date and time,temperature=air; shade (f),humidity=Humidity %"),
                List.of(),
                TimeFormat.of("dd.MM.yyyy HH:mm", BERLIN),
                ';',
                true,
                true));

    long seven = Instant.parse("2026-10-03T05:00:00Z").toEpochMilli();
    assertThat(samples(recording))
        .containsExactly(
            new RecordedSample(seven, 20_500, 71_500),
            new RecordedSample(seven + 300_000, 21_000, Thousandths.NONE));
    assertThat(recording.headerLine()).isEqualTo(1);
    assertThat(recording.rejected())
        .containsExactly(
            new RejectedRow(
                4,
                "temperature was '70.7' but it must be a number with a decimal comma in"
                    + " -76..212 F"));
  }

  @Test
  void firstRowThatIsNoData_isAHeader_whenColumnsAreNumbers() throws Exception {
    Recording recording = read("\uFEFFtime,temp,rh\n0,20.5,50\n", "epoch-seconds");

    assertThat(recording.headerLine()).isEqualTo(1);
    assertThat(recording.rejectedRows()).isZero();
    assertThat(samples(recording)).containsExactly(new RecordedSample(0, 20_500, 50_000));
  }

  @Test
  void firstRowWithAReadableTime_isAMalformedRow_notAHeader() throws Exception {
    Recording recording = read("0,err,50\n10,20.5,50\n", "epoch-seconds");

    assertThat(recording.headerLine()).isZero();
    assertThat(recording.rejected()).extracting(RejectedRow::line).containsExactly(1L);
  }

  @Test
  void fractionsOfASecond_areKept_inEveryFormat() throws Exception {
    assertThat(read("1790000000.25,20,50", "epoch-seconds").firstMillis())
        .isEqualTo(1_790_000_000_250L);
    assertThat(read("1970-01-01T00:00:01.5Z,20,50", "iso").firstMillis()).isEqualTo(1500);
    assertThat(read("1970-01-01 01:00:01.007+01:00,20,50", "iso").firstMillis()).isEqualTo(1007);
    assertThat(read("1970-01-01 00:01,20,50", "iso").firstMillis()).isEqualTo(60_000);
    assertThat(read("1/1/70 12:00:01.040 AM,20,50", "M/d/uu hh:mm:ss.SSS a").firstMillis())
        .isEqualTo(Instant.parse("2070-01-01T00:00:01.040Z").toEpochMilli());
  }

  @Test
  void hourRepeatedInAutumn_isReadTwice() throws Exception {
    StringBuilder text = new StringBuilder();
    Instant start = Instant.parse("2026-10-24T23:50:00Z");
    for (int i = 0; i < 20; i++) {
      String local = start.plusSeconds(i * 600L).atZone(BERLIN).toLocalDateTime().toString();
      text.append(local).append(",12.5,60\n");
    }

    Recording recording =
        RecordingReader.read(
            file(text.toString()),
            new RecordingFormat(THREE, List.of(), TimeFormat.of("iso", BERLIN), ',', false, false));

    assertThat(samples(recording)).hasSize(20);
    assertThat(recording.firstMillis()).isEqualTo(start.toEpochMilli());
    assertThat(recording.lastMillis()).isEqualTo(start.plusSeconds(19 * 600L).toEpochMilli());
  }

  @Test
  void valuesNoRoomHas_areMalformed_andLimitsAreNot() throws Exception {
    Recording recording =
        read(
            """
            0,-60,0
            1,100,100
            2,100.1,50
            3,-60.1,50
            4,20,100.1
            5,20,-1
            6,NaN,50
            7,0x1p3,50
            8,20,1e1
            9,,50
            """,
            "epoch-seconds");

    assertThat(samples(recording))
        .extracting(RecordedSample::atMillis)
        .containsExactly(0L, 1000L, 8000L);
    assertThat(recording.rejectedRows()).isEqualTo(7);
    assertThat(recording.rejected())
        .extracting(RejectedRow::sentence)
        .contains(
            "humidity was '100.1' but it must be a number in 0..100 %",
            "temperature was '' but it must be a number in -60..100 C");
  }

  @Test
  void impossibleTimes_areMalformed() throws Exception {
    Recording recording = read("0,20,50\n99e99,20,50\n1e17,20,50\nnoon,20,50\n", "epoch-millis");

    assertThat(recording.rows()).isOne();
    assertThat(recording.rejected())
        .extracting(RejectedRow::sentence)
        .contains("time was 'noon' but it must be milliseconds since 1970, such as 1790000000000");
  }

  @Test
  void strayQuote_spoilsItsOwnLineOnly() throws Exception {
    Recording recording = read("0,20,50\n1,\"20,50\n2,\"20\",50\n", "epoch-seconds");

    assertThat(samples(recording)).extracting(RecordedSample::atMillis).containsExactly(0L, 2000L);
    assertThat(recording.rejected()).extracting(RejectedRow::line).containsExactly(2L);
  }

  @Test
  void longListOfMalformedRows_isCountedInFull_butNotKept() throws Exception {
    Recording recording = read("0,20,50\n" + "x,20,50\n".repeat(1000), "epoch-seconds");

    assertThat(recording.rejectedRows()).isEqualTo(1000);
    assertThat(recording.rejected()).hasSize(20);
  }

  @Test
  void evenlySpacedSamples_comeAsOneRun_ofTheStretchThatIsAskedFor() throws Exception {
    Recording recording = read("0,20,50\n10,21,51\n20,22,52\n500,23,53\n", "epoch-seconds");

    List<Long> starts = new ArrayList<>();
    recording.forEach(5_000, 500_000, run -> starts.add(run.startMillis()));
    assertThat(starts).containsExactly(10_000L);
    recording.forEach(500_000, 500_001, run -> starts.add(run.startMillis()));
    assertThat(starts).containsExactly(10_000L, 500_000L);
  }

  @Test
  void whatCannotBeReadAtAll_isOneSentence() throws Exception {
    RecordingFormat named = format("time=When,temperature=Temp", "iso");
    Path noSuchColumn = file("When,Air\n");
    assertThatThrownBy(() -> RecordingReader.read(noSuchColumn, named))
        .isInstanceOf(RecordingException.class)
        .hasMessage(noSuchColumn + ": there is no column 'Temp'; the header has: When, Air");

    Path latin = folder.resolve("latin.csv");
    Files.write(latin, "When,Temp °C\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> RecordingReader.read(latin, named))
        .hasMessage(latin + " was not UTF-8 text but it must be; save it as UTF-8");

    Path missing = folder.resolve("missing.csv");
    assertThatThrownBy(() -> RecordingReader.read(missing, named))
        .hasMessage("there is no file " + missing);
    assertThatThrownBy(() -> RecordingReader.read(folder, named))
        .hasMessageStartingWith(folder + " could not be read: ");
  }

  @Test
  void emptyFile_isARecordingWithoutRows() throws Exception {
    Recording recording = read("\n\n", "iso");
    assertThat(recording.rows()).isZero();
    assertThat(samples(recording)).isEmpty();
  }

  private Recording read(String text, String time) throws Exception {
    return RecordingReader.read(file(text), format("time=1,temperature=2,humidity=3", time));
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("recording.csv"), text);
  }

  private static RecordingFormat format(String columns, String time, RowFilter... filters) {
    return new RecordingFormat(
        Columns.parse(columns),
        List.of(filters),
        TimeFormat.of(time, ZoneOffset.UTC),
        ',',
        false,
        false);
  }

  private static Path resource(String name) throws URISyntaxException {
    return Path.of(RecordingReaderTest.class.getResource(name).toURI());
  }

  private static List<RecordedSample> samples(Recording recording) {
    List<RecordedSample> samples = new ArrayList<>();
    recording.forEach(
        Long.MIN_VALUE,
        Long.MAX_VALUE,
        run -> {
          for (int i = 0; i < run.count(); i++) {
            samples.add(
                new RecordedSample(
                    run.startMillis() + (long) run.stepMillis() * i,
                    run.temperatureMilliC()[i],
                    run.humidityMilliPct()[i]));
          }
        });
    return samples;
  }
}
