package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.page.Page;
import rindward.controller.settings.Problems;
import rindward.controller.settings.SettingsReader;
import rindward.hardware.shed.GeneratedWeather;
import rindward.hardware.shed.ShedFault;
import rindward.hardware.shed.ShedFault.Kind;

/**
 * What a scrape of a running daemon says, in the text exposition format 0.0.4 of Prometheus
 * ("metric name, labels in braces, value").
 */
class MetricsScenarioTest {
  private static final Instant START = Instant.parse("2026-12-10T18:00:00Z");
  private static final Pattern LINE =
      Pattern.compile(
          "[a-zA-Z_:][a-zA-Z0-9_:]*(\\{([a-zA-Z_][a-zA-Z0-9_]*=\"[^\"]*\",?)*})?"
              + " (NaN|[+-]?Inf|[-+0-9.eE]+)");

  @TempDir private Path folder;
  private SimulatedRun rehearsal;
  private Page page;

  @BeforeEach
  void anHourInWinter() throws Exception {
    Path file = folder.resolve("shed.toml");
    String example = Files.readString(Path.of("examples/shed.toml"));
    Files.writeString(file, example.replace("port = 8420", "port = 0"));
    rehearsal =
        new SimulatedRun(
            SettingsReader.read(file, new Problems()).orElseThrow(),
            GeneratedWeather.temperate(7),
            START);
    page = new Page(rehearsal.settings(), rehearsal.daemon().view(), rehearsal.time());
    rehearsal.advance(Duration.ofHours(1));
    for (int tick = 0; tick < 360; tick++) { // As the beat does after each tick.
      rehearsal.advance(Duration.ofSeconds(10));
      rehearsal.daemon().publish();
    }
  }

  @AfterEach
  void close() {
    page.close();
    rehearsal.daemon().close();
  }

  @Test
  void everyLineIsOfTheFormat_andEveryMeterThatTheAlertsAskForIsThere() throws Exception {
    String text = scrape();
    assertThat(text.lines().filter(line -> !line.startsWith("#") && !line.isEmpty()))
        .isNotEmpty()
        .allSatisfy(line -> assertThat(line).matches(LINE));
    String alerts = Files.readString(Path.of("examples/shed-alerts.yml"));
    List<String> asked =
        Pattern.compile("rindward_[a-z_]+")
            .matcher(alerts)
            .results()
            .map(found -> found.group())
            .filter(name -> !name.startsWith("rindward_channel")) // None is in the settings.
            .toList();
    assertThat(asked).hasSizeGreaterThan(2).allSatisfy(name -> assertThat(text).contains(name));
  }

  /** What {@code promtool check metrics} asks of a name, and what a label must not hold. */
  @Test
  void everyMeterSaysWhatItIs_andWhatOnlyRisesIsCounted() throws Exception {
    String text = scrape();
    List<String> names =
        text.lines()
            .filter(line -> line.startsWith("# TYPE "))
            .map(line -> line.split(" ")[2])
            .toList();

    assertThat(names).allSatisfy(name -> assertThat(text).contains("# HELP " + name + " "));
    assertThat(text.lines().filter(line -> line.matches("# TYPE .* counter")))
        .hasSizeGreaterThan(5)
        .allMatch(line -> line.endsWith("_total counter"));
    assertThat(names)
        .contains(
            "rindward_ticks_total",
            "rindward_tick_overruns_total",
            "rindward_store_lost_samples_total");
    assertThat(value(text, "rindward_ticks_total")).isGreaterThan(360);
    assertThat(text.lines().filter(line -> line.startsWith("rindward_lots{")))
        .isNotEmpty()
        .allMatch(line -> line.matches("rindward_lots\\{verdict=\"[a-z-]+\"} [0-9.]+"));
  }

  @Test
  void aRoomIsToldAsItIs_andWhatItsOutputsDid() throws Exception {
    String text = scrape();
    var storage = page.now().now().rooms().get(1);
    assertThat(storage.name()).isEqualTo("storage");
    assertThat(value(text, "rindward_room_temperature_celsius{room=\"storage\"}"))
        .isEqualTo(storage.temperatureC());
    assertThat(value(text, "rindward_room_dew_point_celsius{room=\"storage\"}"))
        .isCloseTo(storage.dewPointC(), within(0.005)); // The page rounds to hundredths.
    String heater = "{kind=\"heater\",output=\"curing-heater\",room=\"curing\"}";
    assertThat(value(text, "rindward_output_switchings_total" + heater)).isPositive();
    assertThat(value(text, "rindward_output_on_seconds_total" + heater)).isBetween(10.0, 3_600.0);
  }

  @Test
  void aProbeThatFails_growsOlder_andItsErrorsCount() throws Exception {
    assertThat(value(scrape(), "rindward_probe_errors_total{probe=\"outdoor\"}")).isZero();
    rehearsal.shed().inject(ShedFault.of(Kind.PROBE_SILENT, "outdoor"));
    for (int tick = 0; tick < 30; tick++) {
      rehearsal.advance(Duration.ofSeconds(10));
      rehearsal.daemon().publish();
    }
    String text = scrape();
    assertThat(value(text, "rindward_probe_errors_total{probe=\"outdoor\"}")).isEqualTo(30);
    assertThat(value(text, "rindward_probe_age_seconds{probe=\"outdoor\"}")).isEqualTo(300);
    assertThat(value(text, "rindward_probe_age_seconds{probe=\"storage-air\"}")).isZero();
  }

  private String scrape() {
    return page.metrics();
  }

  private static double value(String text, String meter) {
    Matcher found =
        Pattern.compile("^" + Pattern.quote(meter) + " (\\S+)$", Pattern.MULTILINE).matcher(text);
    assertThat(found.find()).as(meter + " in\n" + text).isTrue();
    return Double.parseDouble(found.group(1));
  }
}
