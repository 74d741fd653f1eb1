package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.command.CommandRun;
import rindward.controller.crop.Cure;
import rindward.controller.crop.Range;
import rindward.controller.crop.RateCurve;
import rindward.controller.settings.CropGuideReader;

class ReplayCommandTest {
  private static final String RANGE =
      " --time epoch-seconds --temperature 18..22 --humidity 45..55";

  @TempDir Path folder;
  private Path log;

  /** In range; a little cold; warm and damp; on both upper limits, then a gap; the last row. */
  @BeforeEach
  void aRecording() throws IOException {
    log =
        Files.writeString(
            folder.resolve("log.csv"),
            """
            0,20,50
            60,17.9,50
            120.5,25,60
            180,22,55
            600,20,30
            """);
  }

  // Counted by hand.
  @Test
  void json_hasItsKeysInOrder_andTheAccountToTheMillisecond() throws Exception {
    CommandRun run = replay(RANGE + " --accuracy 0.3,2 --hold 5m --json");

    assertThat(run.exit()).isZero();
    JsonNode answer = run.json();
    assertThat(answer.fieldNames())
        .toIterable()
        .containsExactly(
            "rows",
            "rejectedRows",
            "first",
            "last",
            "elapsedSeconds",
            "unknownSeconds",
            "inRange",
            "tooCold",
            "tooWarm",
            "tooDry",
            "tooDamp");
    assertThat(answer.get("rows").asLong()).isEqualTo(5);
    assertThat(answer.get("rejectedRows").asLong()).isZero();
    assertThat(answer.get("first").asText()).isEqualTo("1970-01-01T00:00:00Z");
    assertThat(answer.get("last").asText()).isEqualTo("1970-01-01T00:10:00Z");
    assertThat(answer.get("elapsedSeconds").asDouble()).isEqualTo(600);
    assertThat(answer.get("unknownSeconds").asDouble()).isEqualTo(120);
    assertThrice(answer.get("inRange"), 360, 60, 420.5);
    assertThrice(answer.get("tooCold"), 60.5, 0, 60.5);
    assertThrice(answer.get("tooWarm"), 59.5, 59.5, 359.5);
    assertThrice(answer.get("tooDry"), 0, 0, 0);
    assertThrice(answer.get("tooDamp"), 59.5, 59.5, 359.5);
  }

  @Test
  void humanOutput_saysTheSame() {
    CommandRun run = replay(RANGE);

    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("log.csv against 18.0..22.0 C and 45.0..55.0 %")
        .containsPattern("rows +5 used, 0 left out")
        .containsPattern("first +1 Jan 1970 00:00:00 UTC")
        .containsPattern("elapsed +0:10:00")
        .containsPattern("unknown +0:02:00 +20\\.0 %")
        .containsPattern("in range +0:06:00 +60\\.0 %");
  }

  @Test
  void usUnits_areThoseOfTheRecordingAndTheRange() throws Exception {
    Files.writeString(log, "0,68,50\n60,68,50\n");
    CommandRun run =
        replay(
            " --units us --time epoch-seconds --temperature 68..70 --humidity 45..55"
                + " --accuracy 0.9,0 --json");

    JsonNode answer = run.json();
    assertThrice(answer.get("inRange"), 60, 0, 60);
    assertThrice(answer.get("tooCold"), 0, 0, 60);
    assertThat(
            replay(" --units us --time epoch-seconds --temperature 68..70 --humidity 45..55").out())
        .contains("68.0..70.0 F");
  }

  @Test
  void crop_givesRangeAndCure() throws Exception {
    Cure cure = CropGuideReader.builtIn().crop("butternut").orElseThrow().cure().orElseThrow();
    int air = cure.target().temperature().middle();
    int damp = cure.target().humidity().middle();
    StringBuilder text = new StringBuilder();
    for (int minute = 0; minute <= 60; minute++) {
      text.append(minute * 60).append(',').append(air / 1000.0).append(',');
      text.append(damp / 1000.0).append('\n');
    }
    Files.writeString(log, text);

    CommandRun run = replay(" --time epoch-seconds --crop butternut --json");

    JsonNode answer = run.json();
    double earned = 3_600_000.0 * cure.femtoPerMilli(air, damp) / RateCurve.WHOLE;
    assertThat(earned).isPositive();
    assertThrice(answer.get("inRange"), 3600, 3600, 3600);
    assertThrice(answer.get("cureProgress"), earned, earned, earned);
    assertThat(replay(" --time epoch-seconds --crop butternut").out())
        .containsPattern("cured +0\\.");
  }

  @Test
  void stageKeep_takesTheStorageRange_andGivenNumbersGoBeforeIt() throws Exception {
    Range keep = CropGuideReader.builtIn().crop("butternut").orElseThrow().keeping().range();
    int warm = keep.temperature().high() / 1000 + 2;
    Files.writeString(log, "0," + warm + ",60\n60," + warm + ",60\n");
    String question = " --time epoch-seconds --crop butternut --stage keep --json";

    JsonNode guided = replay(question).json();
    JsonNode given = replay(question + " --temperature 0..40").json();

    assertThrice(guided.get("tooWarm"), 60, 60, 60);
    assertThrice(given.get("tooWarm"), 0, 0, 0);
  }

  @Test
  void cureOfATypeThatIsNotCured_isWrongUsage_andSaysWhy() throws Exception {
    CommandRun run = replay(" --time epoch-seconds --crop acorn --stage cure");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .startsWith("rindward replay: --stage was cure but it must be keep for acorn: ")
        .hasLineCount(1);
    JsonNode keeping = replay(" --time epoch-seconds --crop acorn --stage keep --json").json();
    assertThrice(keeping.get("cureProgress"), 0, 0, 0);
  }

  @Test
  void moreThanATenthMalformed_isNotWell_andEachIsNamed() throws IOException {
    Files.writeString(log, "0,20,50\n".repeat(8) + "x,20,50\n");
    CommandRun run = replay(RANGE + " --json");

    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).startsWith("line 9: time was 'x' but it must be ").hasLineCount(1);
    assertThat(run.out()).contains("\"rejectedRows\" : 1");
  }

  @Test
  void aTenthMalformed_isStillWell() throws IOException {
    Files.writeString(log, "0,20,50\n".repeat(9) + "x,20,50\n");
    assertThat(replay(RANGE).exit()).isZero();
  }

  @Test
  void longListOfMalformedRows_endsWithHowManyMore() throws IOException {
    Files.writeString(log, "0,20,50\n" + "x,20,50\n".repeat(50));
    assertThat(replay(RANGE).err()).endsWith("and 30 more rows that cannot be read\n");
  }

  @Test
  void noUsableRow_isWrongUsage() throws IOException {
    Files.writeString(log, "time,temp,rh\n");
    CommandRun run = replay(RANGE + " --json");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(log + " has no row that can be used").hasLineCount(1);
  }

  @Test
  void header_isSaid() throws IOException {
    Files.writeString(log, "time;temp;rh\n0;20,5;50\n");
    CommandRun run = replay(RANGE + " --decimal-comma");
    assertThat(run.out()).contains("line 1 was taken as a header");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --humidity 45..55 | --temperature must say the range, such as 12..15, or --crop must name
          --temperature 18..22 | --humidity must say the range in percent, such as 60..70, or --crop
          --temperature 22..18 | Invalid value for option '--temperature': '22..18' must be two
          --temperature 18 | Invalid value for option '--temperature': '18' must be two numbers
          --humidity 1..NaN | Invalid value for option '--humidity': '1..NaN' must be two numbers
          --hold 0s | Invalid value for option '--hold': '0s' must be a time above zero
          --hold 5 | Invalid value for option '--hold': '5' must be a time above zero
          --accuracy 0.3 | Invalid value for option '--accuracy': '0.3' must be degrees and
          --crop acrn | --crop was 'acrn' but it must be one of acorn, buttercup, butternut
          --crop butternut --stage eat | Invalid value for option '--stage'
          --accuracy -1,2 | Invalid value for option '--accuracy': '-1,2' must be degrees and
          """)
  void wrongArgument_isOneSentence(String arguments, String sentence) {
    CommandRun run = replay(" " + arguments);

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("rindward replay: " + sentence).hasLineCount(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          --zone Mars | --zone was 'Mars' but it must be a time zone
          --delimiter ;; | --delimiter was ';;' but it must be one character, or tab
          --columns 1,2,3 | columns was '1,2,3' but it must be like
          --where 4 | row filter was '4' but it must be a column and a value
          --columns time=When,temperature=2 | LOG: there is no column 'When'; the header has: 0, 20
          """)
  void wrongDescriptionOfTheFile_isOneSentence(String arguments, String sentence) {
    CommandRun run = replay(RANGE + " " + arguments);

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .startsWith("rindward replay: " + sentence.replace("LOG", log.toString()))
        .hasLineCount(1);
  }

  private CommandRun replay(String arguments) {
    return CommandRun.of(("replay " + log + arguments).split(" "));
  }

  private static void assertThrice(
      JsonNode total, double measured, double certain, double possible) {
    assertThat(total.get("measured").asDouble()).isEqualTo(measured);
    assertThat(total.get("certain").asDouble()).isEqualTo(certain);
    assertThat(total.get("possible").asDouble()).isEqualTo(possible);
  }
}
