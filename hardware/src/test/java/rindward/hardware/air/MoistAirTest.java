package rindward.hardware.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Moist air against what others published and computed, and at the places where it misleads. */
class MoistAirTest {
  private static final double SEA = StandardAtmosphere.SEA_LEVEL_PA;
  private static final double AT_500_M = 95_461;

  @ParameterizedTest
  @CsvFileSource(resources = "psychrometric-states.csv", numLinesToSkip = 2)
  void agreesWithAnIndependentLibrary_toItsPrintedDigits(
      double temperatureC,
      double relativeHumidityPct,
      double pressurePa,
      double saturationPa,
      double vapourPa,
      double deficitKPa,
      double dewPointC,
      double humidityRatio,
      double absoluteHumidityGM3,
      double wetBulbC,
      double enthalpyKJKg,
      double volumeM3Kg,
      double densityKgM3) {
    MoistAir air = new MoistAir(temperatureC, relativeHumidityPct, pressurePa);

    assertThat(SaturationPressure.overIceOrWaterPa(temperatureC))
        .isCloseTo(saturationPa, within(0.0001));
    assertThat(air.vapourPressurePa()).isCloseTo(vapourPa, within(0.0001));
    assertThat(air.vapourPressureDeficitKPa()).isCloseTo(deficitKPa, within(0.000001));
    assertThat(air.dewPointC()).isCloseTo(dewPointC, within(0.000002));
    assertThat(air.humidityRatio()).isCloseTo(humidityRatio, within(0.000000001));
    assertThat(air.absoluteHumidityGM3()).isCloseTo(absoluteHumidityGM3, within(0.000001));
    assertThat(air.wetBulbC()).isCloseTo(wetBulbC, within(0.000002));
    assertThat(air.enthalpyKJKg()).isCloseTo(enthalpyKJKg, within(0.000001));
    assertThat(air.specificVolumeM3Kg()).isCloseTo(volumeM3Kg, within(0.000001));
    assertThat(air.densityKgM3()).isCloseTo(densityKgM3, within(0.000001));
  }

  // ASHRAE Fundamentals ch. 1, example 1; its figures are read off the chart.
  @Test
  void handbookExample_fromDryAndWetBulb() {
    double ratio = WetBulb.humidityRatio(40, 20, SEA);
    MoistAir air = MoistAir.ofHumidityRatio(40, ratio, SEA);

    assertThat(ratio * 1000).isCloseTo(6.5, within(0.1));
    assertThat(air.dewPointC()).isCloseTo(7, within(0.5));
    assertThat(air.relativeHumidityPct()).isCloseTo(14, within(0.5));
    assertThat(air.enthalpyKJKg()).isCloseTo(56.7, within(0.05));
    assertThat(air.specificVolumeM3Kg()).isCloseTo(0.896, within(0.0005));
  }

  // PsychroLib documentation: dew point of 25 C and 80 % is 21.309397163661785 C.
  @Test
  void documentedDewPoint() {
    assertThat(new MoistAir(25, 80, SEA).dewPointC()).isCloseTo(21.309397, within(0.000001));
  }

  // PsychroLib 2.5.0 test suite; the 0.03 % are its own.
  @ParameterizedTest
  @CsvSource({"30, 25, 0.0192281", "-1, -5, 0.00120400"})
  void publishedHumidityRatio_fromWetBulb(double dryC, double wetC, double ratio) {
    assertThat(WetBulb.humidityRatio(dryC, wetC, AT_500_M))
        .isCloseTo(ratio, withinPercentage(0.03));
  }

  // PsychroLib 2.5.0 test suite.
  @Test
  void publishedPropertiesOfHumidAirAt500Metres() {
    assertThat(Psychrometrics.humidityRatio(3169.7, AT_500_M))
        .isCloseTo(0.0213603998047487, within(1e-12));
    assertThat(Psychrometrics.enthalpyKJKg(30, 0.02)).isCloseTo(81.316, within(0.0005));
    assertThat(Psychrometrics.specificVolumeM3Kg(30, 0.02, AT_500_M))
        .isCloseTo(0.940855374, within(1e-6));
    assertThat(Psychrometrics.densityKgM3(30, 0.02, AT_500_M)).isCloseTo(1.084119863, within(1e-6));
  }

  // ASHRAE Fundamentals 2017 ch. 1 table 1, as in the PsychroLib 2.5.0 test suite: whole pascals.
  @ParameterizedTest
  @CsvSource({
    "-500, 107478",
    "0, 101325",
    "500, 95461",
    "1000, 89875",
    "4000, 61640",
    "10000, 26436"
  })
  void standardAtmosphere(double altitudeM, double pressurePa) {
    assertThat(StandardAtmosphere.pressurePa(altitudeM)).isCloseTo(pressurePa, within(1.0));
  }

  @Test
  void altitude_changesWhatIsPerKilogram_butNeitherDewPointNorDeficit() {
    MoistAir low = new MoistAir(27, 80, SEA);
    MoistAir high = new MoistAir(27, 80, StandardAtmosphere.pressurePa(1600));

    assertThat(high.dewPointC()).isEqualTo(low.dewPointC());
    assertThat(high.vapourPressureDeficitKPa()).isEqualTo(low.vapourPressureDeficitKPa());
    assertThat(high.absoluteHumidityGM3()).isEqualTo(low.absoluteHumidityGM3());
    assertThat(high.humidityRatio()).isGreaterThan(low.humidityRatio() * 1.2);
    assertThat(high.densityKgM3()).isLessThan(low.densityKgM3() * 0.83);
  }

  @Test
  void dryAir_hasNoDewPoint_butEverythingElse() {
    MoistAir air = new MoistAir(20, 0, SEA);

    assertThat(air.dewPointC()).isNaN();
    assertThat(air.humidityRatio()).isZero();
    assertThat(air.wetBulbC()).isBetween(5.0, 6.5);
    assertThat(air.enthalpyKJKg()).isCloseTo(20.12, within(1e-9));
  }

  // Over liquid water it would be -6.776 C; same formulation, computed independently.
  @Test
  void belowZero_theDewPointIsTheFrostPoint() {
    assertThat(new MoistAir(10, 30, SEA).dewPointC()).isCloseTo(-6.010478, within(0.000001));
  }

  // At 5 C a wet bulb of 0 C means 0.0017564 over water and 0.0019902 over ice.
  @Test
  void nearFreezing_theWetWickWinsOverTheIcedOne() {
    assertThat(WetBulb.temperatureC(5, 0.00176, SEA)).isBetween(0.0, 0.05);
    assertThat(WetBulb.temperatureC(5, 0.00199, SEA)).isBetween(0.3, 0.6);
    assertThat(WetBulb.temperatureC(5, 0.00175, SEA)).isBetween(-0.6, -0.3);
  }

  @ParameterizedTest
  @CsvSource({
    "61, 50, 101325, temperature was 61 but it must lie in -40..60 C",
    "-40.5, 50, 101325, temperature was -40.5 but it must lie in -40..60 C",
    "20, 100.1, 101325, relative humidity was 100.1 but it must lie in 0..100 %",
    "20, -1, 101325, relative humidity was -1 but it must lie in 0..100 %",
    "20, NaN, 101325, relative humidity was NaN but it must lie in 0..100 %",
    "20, 50, 1013, air pressure was 1013 but it must lie in 22000..180000 Pa"
  })
  void outsideItsRange_isRefusedInOneSentence(
      double temperatureC, double humidityPct, double pressurePa, String sentence) {
    assertThatThrownBy(() -> new MoistAir(temperatureC, humidityPct, pressurePa))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(sentence);
  }

  @Test
  void moreWaterThanAirCanHold_isNotAState() {
    assertThatThrownBy(() -> MoistAir.ofHumidityRatio(10, 0.02, SEA))
        .hasMessageStartingWith("relative humidity was 25");
    assertThat(Psychrometrics.relativeHumidityPct(10, 0.02, SEA)).isGreaterThan(250);
  }

  @Test
  void impossibleWetBulbs_areRefused() {
    assertThatThrownBy(() -> WetBulb.humidityRatio(20, 21, SEA))
        .hasMessage("wet bulb was 21.0 C but it must not be above the dry bulb of 20.0 C");
    assertThatThrownBy(() -> WetBulb.humidityRatio(40, 2, SEA))
        .hasMessage("wet bulb was 2.0 C but even dry air of 40.0 C does not cool that far");
  }

  @Test
  void altitudesWithoutAStandard_areRefused() {
    assertThatThrownBy(() -> StandardAtmosphere.pressurePa(12_000))
        .hasMessage("altitude was 12000 but it must lie in -5000..11000 m");
  }
}
