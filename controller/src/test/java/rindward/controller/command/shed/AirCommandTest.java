package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rindward.controller.command.CommandRun;

class AirCommandTest {
  // PsychroLib 2.5.0, at sea level; the dew point of 25 C and 80 % is in its documentation.
  @Test
  void json_hasItsKeysInOrder_andAgreesWithPublishedFigures() throws Exception {
    CommandRun run = CommandRun.of("air", "--temperature", "25", "--humidity", "80", "--json");

    assertThat(run.exit()).isZero();
    JsonNode answer = run.json();
    assertThat(answer.fieldNames())
        .toIterable()
        .containsExactly(
            "temperatureC",
            "relativeHumidity",
            "dewPointC",
            "humidityRatio",
            "absoluteHumidityGM3",
            "wetBulbC",
            "vapourPressureDeficitKPa",
            "enthalpyKJKg");
    assertThat(answer.get("relativeHumidity").asDouble()).isEqualTo(80);
    assertThat(answer.get("dewPointC").asDouble()).isCloseTo(21.309397, within(1e-6));
  }

  @Test
  void altitude_raisesTheHumidityRatio() throws Exception {
    // PsychroLib 2.5.0: 27 C, 80 % at 1600 m holds 0.022002553 kg/kg.
    CommandRun run =
        CommandRun.of(
            "air", "--temperature", "27", "--humidity", "80", "--altitude", "1600", "--json");

    JsonNode answer = run.json();
    assertThat(answer.get("humidityRatio").asDouble()).isCloseTo(0.022002553, within(1e-9));
  }

  @Test
  void usUnits_areForPeople_andJsonStaysMetric() throws Exception {
    String question = "air --units us --temperature 77 --humidity 80 --altitude 1000";
    CommandRun people = CommandRun.of(question.split(" "));
    CommandRun machine = CommandRun.of((question + " --json").split(" "));
    JsonNode answer = machine.json();

    assertThat(people.out()).contains("Air of 77.0 F", "97.72 kPa").containsPattern("70\\.4 F");
    assertThat(answer.get("temperatureC").asDouble()).isCloseTo(25, within(1e-9));
    assertThat(answer.get("dewPointC").asDouble()).isCloseTo(21.309397, within(1e-6));
  }

  @Test
  void dryAir_hasNoDewPoint_inEitherForm() throws Exception {
    String[] dry = {"air", "--temperature", "-5", "--humidity", "0"};

    assertThat(CommandRun.of(dry).out()).containsPattern("dew point +none");
    CommandRun json = CommandRun.of("air", "--temperature", "-5", "--humidity", "0", "--json");
    assertThat(json.json().get("dewPointC").isNull()).isTrue();
  }

  // PsychroLib 2.5.0: 10 C and 30 % frost at -6.010478 C.
  @Test
  void belowFreezing_theDewPointIsCalledAFrostPoint() {
    CommandRun run = CommandRun.of("air", "--temperature", "10", "--humidity", "30");
    assertThat(run.out()).containsPattern("frost point +-6\\.0 C +a colder surface frosts over");
  }

  @Test
  void humanOutput_isOneAlignedLineAProperty() {
    CommandRun run = CommandRun.of("air", "--temperature", "25", "--humidity", "60");

    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    List<String> rows = run.out().lines().skip(2).toList();
    assertThat(rows).hasSize(7).allSatisfy(row -> assertThat(row.charAt(27)).isEqualTo(' '));
    assertThat(rows.get(0))
        .isEqualTo("  dew point            16.7 C       a colder surface gets wet");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          61 | 50 | metric | 0 | --temperature was 61.0 but it must lie in -40..60 C
          150 | 50 | us | 0 | --temperature was 150.0 but it must lie in -40..140 F
          20 | 101 | metric | 0 | --humidity was 101.0 but it must lie in 0..100 %
          20 | NaN | metric | 0 | --humidity was NaN but it must lie in 0..100 %
          20 | 50 | metric | 12000 | --altitude was 12000.0 but it must lie in -5000..11000 m
          warm | 50 | metric | 0 | Invalid value for option '--temperature'
          20 | 50 | kelvin | 0 | Invalid value for option '--units'
          """)
  void wrongArgument_isOneSentenceAndExitTwo(
      String temperature, String humidity, String units, String altitude, String sentence) {
    CommandRun run =
        CommandRun.of(
            "air",
            "--temperature",
            temperature,
            "--humidity",
            humidity,
            "--units",
            units,
            "--altitude",
            altitude);

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("rindward air: " + sentence).hasLineCount(1);
  }

  @Test
  void missingArgument_isNamed() {
    CommandRun run = CommandRun.of("air", "--temperature", "20");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("--humidity").hasLineCount(1);
  }
}
