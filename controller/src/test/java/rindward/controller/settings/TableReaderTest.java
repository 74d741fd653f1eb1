package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import rindward.controller.crop.Limits;

class TableReaderTest {
  private enum Colour {
    RED,
    DARK_BLUE
  }

  private static final Kind<Duration> TICK =
      Kind.duration(Duration.ofSeconds(1), Duration.ofMinutes(1));

  private final Problems problems = new Problems();

  @Test
  void everyKindOfValueIsRead() {
    TableReader reader =
        read(
            """
            name = " cellar "
            tick = "10s"
            altitude = 200
            offset = -0.3
            air = [55, 65.5]
            colour = "dark-blue"
            words = ["a", "b"]
            on = true
            """);
    assertThat(reader.required("name", Kind.TEXT)).isEqualTo("cellar");
    assertThat(reader.required("tick", TICK)).isEqualTo(Duration.ofSeconds(10));
    assertThat(reader.required("altitude", Kind.whole(0, 4000))).isEqualTo(200);
    assertThat(reader.required("offset", Kind.thousandths(-5_000, 5_000))).isEqualTo(-300);
    assertThat(reader.required("air", Kind.limits(0, 100_000)))
        .isEqualTo(new Limits(55_000, 65_500));
    assertThat(reader.required("colour", Kind.choice(Colour.class))).isEqualTo(Colour.DARK_BLUE);
    assertThat(reader.required("words", Kind.TEXTS)).containsExactly("a", "b");
    assertThat(reader.required("on", Kind.FLAG)).isTrue();
    reader.rejectUnknown();
    assertThat(problems.isEmpty()).isTrue();
  }

  @Test
  void everyProblemIsToldWithItsPlaceFromTheTopDown() {
    TableReader reader =
        read(
            """
            tick = "10x"
            nmae = "cellar"

            [air]
            humidity = [65, 55]
            altitude = 4001
            colour = "green"
            """);
    reader.table("air").ifPresent(TableReaderTest::readAir);
    reader.required("name", Kind.TEXT);
    reader.required("tick", TICK);
    reader.rejectUnknown();
    assertThat(sentences())
        .containsExactly(
            "shed.toml:1:1: name is missing but it must be a text that is not empty",
            "shed.toml:1:1: tick was '10x' but it must be a time from 1s to 1m, written like"
                + " \"90s\", \"5m\", \"2h\" or \"10d\"",
            "shed.toml:2:1: nmae is not a key known here; did you mean 'name'?",
            "shed.toml:5:1: air.humidity was '[65, 55]' but it must be two numbers from 0 to 100,"
                + " the lower one first",
            "shed.toml:6:1: air.altitude was '4001' but it must be a whole number from 0 to 4000",
            "shed.toml:7:1: air.colour was 'green' but it must be one of red, dark-blue");
  }

  @Test
  void aKeyThatIsNotThere_fallsBack() {
    assertThat(read("").optional("tick", TICK, Duration.ofSeconds(10)))
        .isEqualTo(Duration.ofSeconds(10));
    assertThat(problems.isEmpty()).isTrue();
  }

  @Test
  void whatIsNotToml_isToldWithItsLine() {
    assertThat(TableReader.of("shed.toml", "a = 1\nb = \n", problems)).isEmpty();
    assertThat(sentences())
        .singleElement()
        .asString()
        .startsWith("shed.toml:2:5: this is not TOML:");
  }

  @Test
  void listsOfTables_carryTheirNumber() {
    TableReader reader = read("[[probe]]\nid = 1\n[[probe]]\nid = \"x\"\n");
    reader.list("probe").forEach(probe -> probe.required("id", Kind.whole(0, 9)));
    assertThat(sentences())
        .containsExactly(
            "shed.toml:4:1: probe[2].id was 'x' but it must be a whole number from 0 to 9");
  }

  @Test
  void whatShouldBeATable_isRefused() {
    TableReader reader = read("air = 3\nprobe = [1]\n");
    assertThat(reader.table("air")).isEmpty();
    assertThat(reader.list("probe")).isEmpty();
    assertThat(sentences())
        .containsExactly(
            "shed.toml:1:1: air was '3' but it must be a table",
            "shed.toml:2:1: probe was '[1]' but it must be a list of tables");
  }

  private static void readAir(TableReader air) {
    air.required("humidity", Kind.limits(0, 100_000));
    air.required("altitude", Kind.whole(0, 4000));
    air.required("colour", Kind.choice(Colour.class));
  }

  private TableReader read(String text) {
    return TableReader.of("shed.toml", text, problems).orElseThrow();
  }

  private List<String> sentences() {
    return problems.list().stream().map(Problem::toString).toList();
  }
}
