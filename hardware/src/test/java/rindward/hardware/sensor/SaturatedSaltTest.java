package rindward.hardware.sensor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The humidity over two salts, against tables that others made. */
class SaturatedSaltTest {

  /** T. Padfield, Humidity over saturated salt solutions: magnesium chloride, one decimal. */
  @ParameterizedTest
  @CsvSource({"5, 33.6", "10, 33.5", "15, 33.3", "20, 33.1", "25, 32.8", "30, 32.4"})
  void magnesiumChloride_isThatOfAnotherTable(int celsius, double percent) {
    // That table gives one decimal.
    assertThat(SaturatedSalt.MAGNESIUM_CHLORIDE.humidityMilliPct(celsius * 1000) / 1000.0)
        .isCloseTo(percent, within(0.051));
  }

  /** Greenspan 1977, abstract and tables as quoted: 75.29 % at 25 C. */
  @Test
  void tableSalt_isThatOfTheFirstTable() {
    assertThat(SaturatedSalt.SODIUM_CHLORIDE.humidityMilliPct(25_000)).isEqualTo(75_290);
  }

  /** CRC Handbook, constant humidity solutions: A exp(B/T), stated to 2 %. */
  @ParameterizedTest
  @CsvSource({"5", "12", "20", "27", "30"})
  void bothSalts_areWithinTheStatedErrorOfAFit(int celsius) {
    double kelvin = celsius + 273.15;
    assertThat(SaturatedSalt.SODIUM_CHLORIDE.humidityMilliPct(celsius * 1000) / 1000.0)
        .isCloseTo(69.20 * Math.exp(25 / kelvin), within(0.02 * 75));
    assertThat(SaturatedSalt.MAGNESIUM_CHLORIDE.humidityMilliPct(celsius * 1000) / 1000.0)
        .isCloseTo(29.26 * Math.exp(34 / kelvin), within(0.02 * 33));
  }

  @Test
  void betweenTheValues_itIsStraight() {
    assertThat(SaturatedSalt.SODIUM_CHLORIDE.humidityMilliPct(22_500)).isEqualTo(75_380);
    assertThat(SaturatedSalt.isKnownAt(30_000)).isTrue();
    assertThat(SaturatedSalt.isKnownAt(30_001)).isFalse();
    assertThat(SaturatedSalt.isKnownAt(4_999)).isFalse();
  }
}
