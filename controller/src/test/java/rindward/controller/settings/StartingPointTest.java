package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.settings.StartingPoint.Basis;

/**
 * What was accepted by an older program may be refused by this one: no shed stays dark for that.
 */
class StartingPointTest {
  private static final String REFUSED =
      "\n[outputs.ghost]\nroom = \"nowhere\"\nkind = \"heater\"\n";

  @TempDir private Path folder;
  private Path file;
  private String good;

  @BeforeEach
  void example() throws Exception {
    file = folder.resolve("shed.toml");
    good = Files.readString(Path.of("examples/shed.toml"));
  }

  @Test
  void acceptedOnce_andRefusedByNow_isObservedWithoutTheRefusedTable() throws Exception {
    Files.writeString(file, good + REFUSED);
    new Accepted(good + REFUSED, Instant.EPOCH, "Wren").keep(file);
    Problems problems = new Problems();

    StartingPoint start = StartingPoint.of(file, problems).orElseThrow();

    assertThat(start.basis()).isEqualTo(Basis.ONLY_OBSERVED);
    assertThat(start.settings().rooms()).hasSameSizeAs(read(good).rooms());
    assertThat(start.settings().outputs())
        .extracting(OutputSetting::name)
        .doesNotContain("ghost")
        .hasSameSizeAs(read(good).outputs());
    assertThat(start.finding()).isPresent();
    assertThat(problems.list()).isNotEmpty();
  }

  @Test
  void whatIsRefusedAsAWhole_startsNothing() throws Exception {
    Files.writeString(file, "no settings");
    new Accepted("no settings", Instant.EPOCH, "Wren").keep(file);

    assertThat(StartingPoint.of(file, new Problems())).isEmpty();
  }

  private Settings read(String text) {
    return SettingsReader.read(file, "shed.toml", text, new Problems()).orElseThrow();
  }
}
