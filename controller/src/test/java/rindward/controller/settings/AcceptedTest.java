package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Where what was accepted stands, and when a broken file says the same of the wiring. */
class AcceptedTest {
  private static final String FILE =
      """
      [site]
      name = "Hollin Bank Farm"

      [rooms.store]
      temperature = [10, 13]

      [outputs.heater]
      room = "store"
      line = 17
      active = "high"

      [probes.air]
      serial = "28-0316a2791bff"

      [heartbeat]
      line = 24
      """;

  @TempDir private Path folder;

  @Test
  void place_followsFromThePathAlone() {
    assertThat(Accepted.placeOf(Path.of("/home/wren/shed.toml")))
        .isEqualTo(Path.of("/home/wren/shed.toml.accepted"));
    assertThat(Accepted.placeOf(Path.of("/etc/rindward/../rindward/rindward.toml")))
        .isEqualTo(Path.of("/var/lib/rindward-control/rindward.toml.accepted"));
  }

  @Test
  void whatWasKept_isReadAsItWas() throws Exception {
    Path file = folder.resolve("shed.toml");
    Instant at = Instant.parse("2026-11-01T12:00:00.123Z");
    for (String text : new String[] {FILE, "", "# Last accepted\r\nno end of line"}) {
      Accepted accepted = new Accepted(text, at, "Wren; by hand");
      accepted.keep(file);
      assertThat(Accepted.read(file)).contains(accepted);
    }
    assertThat(Accepted.read(folder.resolve("other.toml"))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "line = 17|line = 18",
        "active = \"high\"|active = \"low\"",
        "[outputs.heater]|[outputs.fan]",
        "[outputs.heater]|[outputs.heater",
        "[outputs.heater]|outputs.heater]",
        "[outputs.heater]|[output.heater]",
        "[outputs.heater]|",
        "[site]|outputs.fan.line = 22\n[site]",
        "[rooms.store]|[outputs.fan]\nline = 22\n[rooms.store]",
        "[rooms.store]|[ 'outputs' . fan ]\nline = 22\n[rooms.store]",
        "serial = \"28-|serial = \"29-",
        "[heartbeat]\nline = 24|",
        "[probes.air]|[\"a\"]\n[probes.air]",
        "name = \"|name = \"\"\"",
      })
  void whatTouchesThePartsOrMay_isNotTheSame(String change) {
    String[] both = change.split("\\|", -1);
    assertThat(FILE).contains(both[0]);

    assertThat(Sections.haveSameWiring(FILE.replace(both[0], both[1]), FILE)).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[10, 13]|[10, 13",
        "[rooms.store]|[rooms.store",
        "[rooms.store]|[roms.store]",
        "name = |name ",
        "Hollin|Höllin\\q",
        "[site]|[site]\n[site]",
      })
  void whatIsWrongElsewhere_leavesTheWiringTheSame(String change) {
    String[] both = change.split("\\|", -1);
    assertThat(FILE).contains(both[0]);

    assertThat(Sections.haveSameWiring(FILE.replace(both[0], both[1]), FILE)).isTrue();
  }

  @Test
  void comments_andEmptyLines_doNotCount() {
    assertThat(
            Sections.haveSameWiring(FILE.replace("line = 17", "# the left one\n\nline = 17"), FILE))
        .isTrue();
    assertThat(Stream.of(FILE, "").filter(text -> Sections.haveSameWiring(text, FILE))).hasSize(1);
  }
}
