package rindward.controller.command.shed;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.command.CommandRun;

/** A season from the command line, short enough for a test. */
class SimulateCommandTest {
  private static final String SETTINGS = "examples/shed.toml";

  @TempDir private Path folder;

  @Test
  void simulate_json_hasEveryKeyAndAddsUp() throws Exception {
    CommandRun run = CommandRun.of("simulate", "--settings", SETTINGS, "--days", "12", "--json");
    JsonNode answer = run.json();

    assertThat(run.exit()).isZero();
    JsonNode curing = answer.path("rooms").path(0);
    assertThat(curing.path("name").asText()).isEqualTo("curing");
    assertThat(curing.path("inRangeShare").asDouble()).isBetween(0.3, 1.0);
    assertThat(curing.path("wetFruitHours").isNumber()).isTrue();
    assertThat(curing.path("chillingDegreeHours").asDouble()).isZero();
    double kWh = 0;
    for (JsonNode output : curing.path("outputs")) {
      assertThat(output.path("switchings").isInt()).isTrue();
      assertThat(output.path("hoursOn").isNumber()).isTrue();
      kWh += output.path("kWh").asDouble();
    }
    assertThat(curing.path("kWh").asDouble())
        .isCloseTo(kWh, org.assertj.core.data.Offset.offset(1e-9));
    // Ten days at 27-30 C cure winter squash (the guide's own rate), so after twelve it has cured.
    assertThat(answer.path("lots").findValuesAsText("code")).contains("K1", "B1", "A1");
    assertThat(answer.path("lots").path(0).path("cureProgress").asDouble()).isEqualTo(1);
    assertThat(answer.path("lots").path(0).path("curedAt").asText()).startsWith("20");
  }

  @Test
  void simulate_plain_keepsTheCuringRoomShorterInItsRange() throws Exception {
    JsonNode ours = season("rindward");
    JsonNode plain = season("plain");

    assertThat(curingShare(ours)).isGreaterThan(curingShare(plain));
  }

  @Test
  void simulate_missingWeather_isRefusedInOneSentence() {
    CommandRun run = CommandRun.of("simulate", "--settings", SETTINGS, "--weather", "nowhere.epw");

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("nowhere.epw");
  }

  @Test
  void simulate_wrongSeason_namesEverySlip() throws Exception {
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(Path.of(SETTINGS))
            .replace("crop = \"kabocha\"", "crop = \"kabotcha\"")
            .replace("arrives = \"10-08\"", "arrives = \"13-08\"")
            .replace("then = \"storage\"", "then = \"cellar\""));

    CommandRun run = CommandRun.of("simulate", "--settings", file.toString());

    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .contains("did you mean 'kabocha'?")
        .contains("season.P1.arrives was '13-08' but it must be a day such as \"09-20\"")
        .contains("then was 'cellar'");
  }

  @Test
  void size_fewDays_namesWhatTheRoomsNeed() throws Exception {
    CommandRun run = CommandRun.of("size", "--settings", SETTINGS, "--days", "3");

    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .containsPattern("Room curing: a heater of \\d+ W, ")
        .containsPattern("keep it in its range \\d+ % of the time for \\d+ kWh");
  }

  private static JsonNode season(String controller) throws Exception {
    return CommandRun.of(
            "simulate", "--settings", SETTINGS, "--days", "8", "--controller", controller, "--json")
        .json();
  }

  private static double curingShare(JsonNode answer) {
    return answer.path("rooms").path(0).path("inRangeShare").asDouble();
  }
}
