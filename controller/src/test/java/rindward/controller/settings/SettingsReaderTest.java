package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.crop.Limits;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * The example file is understood; every slip in it is told with its line and what would be right.
 */
class SettingsReaderTest {
  private static final Path EXAMPLE = Path.of("examples/shed.toml");

  @TempDir private Path folder;

  private static final String PROBE =
      "driver = \"simulated\"\naccuracy = { temperature = 0.2, humidity = 2 }";

  @Test
  void read_exampleFile_isUnderstoodWithoutProblems() {
    Problems problems = new Problems();

    Settings settings = SettingsReader.read(EXAMPLE, problems).orElseThrow();

    assertThat(problems.list()).isEmpty();
    assertThat(settings.zone()).isEqualTo(ZoneId.of("America/Chicago"));
    assertThat(settings.tick()).isEqualTo(Duration.ofSeconds(10));
    Room curing = settings.rooms().get(0);
    assertThat(curing.range().temperature()).isEqualTo(new Limits(27_000, 29_000));
    assertThat(curing.has(OutputKind.HEATER)).isTrue();
    assertThat(curing.accuracy().temperatureMilliC()).isEqualTo(200);
    assertThat(settings.store()).isAbsolute();
  }

  @Test
  void read_severalSlips_tellsAllOfThemInOneReading() throws IOException {
    List<String> sentences =
        problemsOf(
            change("tick = \"10s\"", "tick = \"10\""),
            change("temperature = [27, 29]", "temperature = [29, 27]"),
            change(
                "[rooms.storage]\npurpose = \"storage\"",
                "[rooms.storage]\npurpose = \"stroage\""));

    assertThat(sentences).hasSize(3);
    assertThat(sentences.get(0))
        .matches(
            "shed.toml:\\d+:\\d+: control.tick was '10' but it must be a time from 1s to 15s.*");
    assertThat(sentences.get(1))
        .contains("rooms.curing.temperature was '[29, 27]' but it must be two numbers")
        .contains("the lower one first");
    assertThat(sentences.get(2))
        .contains("rooms.storage.purpose was 'stroage' but it must be one of curing, storage");
  }

  @Test
  void read_humidityAsAShareOfOne_isAMistakeInUnits() throws IOException {
    assertThat(
            problemsOf(
                change(
                    "temperature = [27, 29]\nhumidity = [75, 80]",
                    "temperature = [27, 29]\nhumidity = [0.5, 0.7]")))
        .singleElement()
        .asString()
        .contains("rooms.curing.humidity was '[0.5, 0.7]' but it must be in percent");
  }

  @Test
  void read_roomOfTheWrongKind_isToldOnce() throws IOException {
    List<String> problems =
        problemsOf(
            change(
                "[probes.outdoor]", "[probes.other]\nroom = 5\n" + PROBE + "\n[probes.outdoor]"));

    assertThat(problems).singleElement().asString().contains("probes.other.room was '5' but");
  }

  @Test
  void read_nameWithASpace_isHintedAsTomlWritesIt() throws IOException {
    assertThat(
            problemsOf(
                change(
                    "[rooms.storage]",
                    "[rooms.\"old barn\"]\npurpose = \"storage\"\ntemperature = [10, 13]\n"
                        + "humidity = [50, 70]\n\n[rooms.storage]")))
        .singleElement()
        .asString()
        .contains("for example [probes.\"old barn-air\"] with room = \"old barn\"");
  }

  @Test
  void read_unknownKey_isASlipAndNotAComment() throws IOException {
    assertThat(problemsOf(change("altitude_m = 200", "altitude = 200")))
        .singleElement()
        .asString()
        .contains("site.altitude is not a key known here; did you mean 'altitude_m'?");
  }

  @Test
  void read_probeInARoomThatIsNotThere_namesTheRoomsThatAre() throws IOException {
    assertThat(
            problemsOf(
                change(
                    "[probes.storage-air]\nroom = \"storage\"",
                    "[probes.storage-air]\nroom = \"barn\"")))
        .anySatisfy(
            s ->
                assertThat(s)
                    .contains(
                        "probes.storage-air.room was 'barn' but no room of that name is declared"
                            + " (declared: curing, storage)"))
        .anySatisfy(
            s -> assertThat(s).contains("rooms.storage has no probe but needs at least one"));
  }

  @Test
  void read_secondHeaterInARoom_namesTheFirst() throws IOException {
    assertThat(problemsOf(change("kind = \"exhaust\"", "kind = \"heater\"")))
        .first()
        .asString()
        .contains("kind was 'heater' but room curing has one already: curing-heater");
  }

  @Test
  void read_certificateThatIsNotThere_orWithoutItsKey_isRefusedByName() throws IOException {
    Path absent = folder.resolve("absent.pem").toAbsolutePath();
    assertThat(problemsOf(change("port = 8420", "tls_certificate = \"absent.pem\"")))
        .hasSize(2)
        .anySatisfy(
            s ->
                assertThat(s)
                    .contains(
                        "dashboard.tls_certificate was 'absent.pem' but there must be such a file: "
                            + absent))
        .anySatisfy(s -> assertThat(s).contains("dashboard.tls_key is missing but it must"));
  }

  @Test
  void read_certificateAndKey_areLookedForBesideTheSettings() throws IOException {
    Files.writeString(folder.resolve("shed.pem"), "looked into by whoever serves the page");
    Problems problems = new Problems();
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file,
        Files.readString(EXAMPLE)
            .replace("port = 8420", "tls_certificate = \"shed.pem\"\ntls_key = \"shed.pem\""));

    Settings settings = SettingsReader.read(file, problems).orElseThrow();

    assertThat(settings.page().tls().certificate()).isEqualTo(folder.resolve("shed.pem"));
    assertThat(settings.page().url(8420)).isEqualTo("https://127.0.0.1:8420/");
  }

  @Test
  void read_secondPlaceForCopies_isAFolderBesideTheFile_orAnotherMachines() throws IOException {
    assertThat(elsewhere("stick/rindward"))
        .isEqualTo(new Elsewhere(null, folder.resolve("stick/rindward").toString()));
    assertThat(elsewhere("/media/stick")).isEqualTo(new Elsewhere(null, "/media/stick"));
    assertThat(elsewhere("shed@barn.farm.example:shed copies"))
        .isEqualTo(new Elsewhere("shed@barn.farm.example", "shed copies"));
    assertThat(elsewhere("-oProxyCommand=x:y").host()).isNull();
  }

  private Elsewhere elsewhere(String written) throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("shed.toml"),
            Files.readString(EXAMPLE)
                .replace("[store]", "[store]\nelsewhere = \"" + written + "\""));
    return Objects.requireNonNull(
        SettingsReader.read(file, new Problems()).orElseThrow().elsewhere());
  }

  @Test
  void read_nameOfThePageWithAPort_saysWhatItMustBe() throws IOException {
    assertThat(problemsOf(change("port = 8420", "names = [\"shed.farm.example/\"]")))
        .singleElement()
        .asString()
        .contains("dashboard.names was '")
        .contains("but it must be a list of names or addresses without a port");
  }

  @Test
  void read_holdShorterThanTheTick_saysWhatItMustBe() throws IOException {
    assertThat(
            problemsOf(
                change("tick = \"10s\"", "tick = \"15s\""),
                change("hold = \"5m\"", "hold = \"12s\"")))
        .singleElement()
        .asString()
        .contains("control.hold was '12s' but it must be at least as long as control.tick");
  }

  @Test
  void read_timeZoneThatDoesNotExist_isTold() throws IOException {
    assertThat(problemsOf(change("America/Chicago", "America/Chicagoo")))
        .singleElement()
        .asString()
        .contains("site.time_zone was 'America/Chicagoo' but it must be a time zone such as");
  }

  @Test
  void read_missingFile_isOneSentence() {
    Problems problems = new Problems();

    assertThat(SettingsReader.read(folder.resolve("nowhere.toml"), problems)).isEmpty();
    assertThat(problems.list())
        .singleElement()
        .satisfies(p -> assertThat(p.sentence()).startsWith("there is no file"));
  }

  @Test
  void read_fileInAnotherEncoding_isOneSentence() throws IOException {
    Path file = folder.resolve("latin.toml");
    Files.write(file, "[site]\nname = \"Hof Br\u00fchl\"\n".getBytes(StandardCharsets.ISO_8859_1));
    Problems problems = new Problems();

    assertThat(SettingsReader.read(file, problems)).isEmpty();
    assertThat(problems.list())
        .singleElement()
        .satisfies(p -> assertThat(p.sentence()).contains("must be text in UTF-8"));
  }

  @Test
  void advice_probeTooCoarseForItsRange_isToldInTheCheck() throws IOException {
    Path file = folder.resolve("shed.toml");
    Files.writeString(
        file, Files.readString(EXAMPLE).replace("humidity = [75, 80]", "humidity = [79, 81]"));

    Settings settings = SettingsReader.read(file, new Problems()).orElseThrow();

    assertThat(SettingsAdvice.of(settings))
        .containsExactly(
            "Room curing: its probes are good to +-2 %, so time in a humidity range only 2 % wide"
                + " can never be certain.");
  }

  /** One slip: what stands in the example and what stands there instead. */
  private record Change(String from, String to) {}

  private static Change change(String from, String to) {
    return new Change(from, to);
  }

  private List<String> problemsOf(Change... changes) throws IOException {
    String text = Files.readString(EXAMPLE);
    for (Change change : changes) {
      assertThat(text).contains(change.from());
      text = text.replaceFirst(java.util.regex.Pattern.quote(change.from()), change.to());
    }
    Path file = folder.resolve("shed.toml");
    Files.writeString(file, text);
    Problems problems = new Problems();
    assertThat(SettingsReader.read(file, problems)).isEmpty();
    return problems.list().stream().map(Problem::toString).toList();
  }
}
