package rindward.hardware.shed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads EPW files made up here, and a real one where it lies beside the repository. */
class EpwWeatherTest {
  @TempDir Path folder;

  private final List<String> lines = new InventedEpw().lines();

  private EpwWeather read() throws IOException {
    return EpwWeather.read(Files.write(folder.resolve("made-up.epw"), lines));
  }

  private static long utc(String instant) {
    return Instant.parse(instant).getEpochSecond();
  }

  private void replaceInRow(int row, int field, String value) {
    String[] fields = lines.get(8 + row).split(",", -1);
    fields[field] = value;
    lines.set(8 + row, String.join(",", fields));
  }

  @Test
  void rowStampedWithTheEndOfItsHour_holdsAtThatMomentInTheFilesZone() throws IOException {
    // Row 0 ends at 01:00 on 1 January at UTC-6, and row n has n/200 C.
    EpwWeather weather = read();
    assertThat(weather.place()).isEqualTo("Nowhere Field");
    assertThat(weather.at(utc("2026-01-01T07:00:00Z")).temperatureC()).isZero();
    assertThat(weather.at(utc("2026-01-01T08:00:00Z")).temperatureC()).isEqualTo(0.005);
    assertThat(weather.at(utc("2026-01-02T07:00:00Z")).temperatureC()).isEqualTo(0.12);
  }

  @Test
  void betweenRows_straightLines_andTheSunAtTheMiddleOfItsHour() throws IOException {
    replaceInRow(9, 13, "400");
    OutdoorAir between = read().at(utc("2026-01-01T15:30:00Z"));
    assertThat(between.temperatureC()).isCloseTo(0.0425, offset(1e-12));
    assertThat(between.globalHorizontalWPerM2()).isCloseTo(400, offset(1e-9));
    assertThat(between.groundC()).isCloseTo(5.0, offset(0.6));
  }

  @Test
  void yearEnds_andTheFilesFirstHourFollows() throws IOException {
    EpwWeather weather = read();
    assertThat(weather.at(utc("2027-01-01T06:00:00Z")).temperatureC()).isEqualTo(87.59 / 2);
    assertThat(weather.at(utc("2027-01-01T06:30:00Z")).temperatureC())
        .isCloseTo(87.59 / 4, offset(1e-9));
    assertThat(weather.at(utc("2027-01-01T07:00:00Z")).temperatureC()).isZero();
  }

  @Test
  void leapDay_repeatsThe28th() throws IOException {
    EpwWeather weather = read();
    assertThat(weather.at(utc("2028-02-29T18:00:00Z")))
        .isEqualTo(weather.at(utc("2028-02-28T18:00:00Z")))
        .isEqualTo(weather.at(utc("2027-02-28T18:00:00Z")));
    assertThat(weather.at(utc("2028-03-01T18:00:00Z")))
        .isEqualTo(weather.at(utc("2027-03-01T18:00:00Z")));
  }

  @Test
  void missingValues_areBridgedAcrossTheirGap() throws IOException {
    replaceInRow(10, 6, "99.9");
    replaceInRow(11, 6, "99.9");
    replaceInRow(20, 21, "999");
    EpwWeather weather = read();
    assertThat(weather.at(utc("2026-01-01T17:00:00Z")).temperatureC())
        .isCloseTo(0.05, offset(1e-9));
    assertThat(weather.at(utc("2026-01-02T03:00:00Z")).windMPerS()).isEqualTo(3);
  }

  @Test
  void dewPointMissing_humidityIsUsed() throws IOException {
    replaceInRow(10, 7, "99.9");
    replaceInRow(10, 8, "50");
    // 50 % of the WMO's 611.2 exp(17.62 t/(243.12 + t)) at 0.05 C, row 10 of the invented year.
    assertThat(read().at(utc("2026-01-01T17:00:00Z")).vapourPressurePa())
        .isCloseTo(306.7, offset(0.1));
  }

  @Test
  void wordInsteadOfANumber_namesFileLineAndColumn() {
    replaceInRow(2, 6, "warm");
    assertThatThrownBy(this::read)
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith(
            "made-up.epw:11: dry bulb temperature was 'warm' but it must be a number");
  }

  @Test
  void valueOutOfReason_namesTheRange() {
    replaceInRow(2, 9, "1013");
    assertThatThrownBy(this::read)
        .hasMessageEndingWith(
            "made-up.epw:11: pressure was '1013' but it must be 31000.0..120000.0");
  }

  @Test
  void rowLeftOut_namesTheHourThatWasDue() {
    lines.remove(8 + 5);
    assertThatThrownBy(this::read)
        .hasMessageEndingWith("made-up.epw:14: month,day,hour was '1,1,7' but it must be 1,1,6");
  }

  @Test
  void halfAYear_isNotEnough() {
    lines.subList(8 + 4000, lines.size()).clear();
    assertThatThrownBy(this::read)
        .hasMessageEndingWith(
            "made-up.epw:4008: last hour of the year was '4000' but it must be 8760");
  }

  @Test
  void anotherKindOfFile_isToldApart() {
    lines.set(0, "time;temperature");
    assertThatThrownBy(this::read)
        .hasMessageEndingWith(
            "made-up.epw:1: first field was 'time;temperature' but it must be LOCATION in an EPW"
                + " file");
  }

  @Test
  void noFile_isSaidPlainly() {
    assertThatThrownBy(() -> EpwWeather.read(folder.resolve("none.epw")))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith("none.epw' but there is no such file");
  }

  /** First row of the typical year of Chicago O'Hare, TMY3 725300: -12.2 C, dew point -16.1 C. */
  @Test
  void realYear_readsAsItsFirstRowSays() throws IOException {
    Path real = Path.of("../../shared/data/weather/chicago-tmy3.epw");
    assumeThat(Files.exists(real)).isTrue();
    EpwWeather weather = EpwWeather.read(real);
    OutdoorAir air = weather.at(utc("2026-01-01T07:00:00Z"));
    assertThat(air.temperatureC()).isEqualTo(-12.2);
    assertThat(air.pressurePa()).isEqualTo(99500);
    assertThat(air.windMPerS()).isEqualTo(2.6);
    // Row says 73 % over liquid water; over ice that is 82 % (ratio of the two at -12.2 C, 1.126).
    assertThat(air.relativeHumidityPct()).isCloseTo(82, offset(1.0));
  }
}
