package rindward.hardware.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for every state of the air, whatever the figures are. */
class MoistAirPropertyTest {

  @Property
  void wetBulb_liesBetweenDewPointAndDryBulb(@ForAll("states") MoistAir air) {
    assertThat(air.wetBulbC()).isLessThanOrEqualTo(air.temperatureC());
    // Below zero the iced wick follows the frost point; both meet at saturation.
    if (!Double.isNaN(air.dewPointC())) {
      assertThat(air.wetBulbC()).isGreaterThanOrEqualTo(air.dewPointC() - 1e-6);
    }
  }

  @Property
  void wetBulb_givesBackTheHumidityRatio(@ForAll("states") MoistAir air) {
    assertThat(WetBulb.humidityRatio(air.temperatureC(), air.wetBulbC(), air.pressurePa()))
        .isCloseTo(air.humidityRatio(), within(1e-9 + 1e-6 * air.humidityRatio()));
  }

  @Property
  void humidityRatio_givesBackTheState(@ForAll("states") MoistAir air) {
    MoistAir again =
        MoistAir.ofHumidityRatio(air.temperatureC(), air.humidityRatio(), air.pressurePa());
    assertThat(again.relativeHumidityPct()).isCloseTo(air.relativeHumidityPct(), within(1e-9));
  }

  @Property
  void airCooledToItsDewPoint_isSaturated(@ForAll("states") MoistAir air) {
    double dewPointC = air.dewPointC();
    if (Double.isNaN(dewPointC)) {
      return;
    }
    assertThat(dewPointC).isLessThanOrEqualTo(air.temperatureC() + 1e-6);
    assertThat(Psychrometrics.relativeHumidityPct(dewPointC, air.humidityRatio(), air.pressurePa()))
        .isCloseTo(100, within(1e-4));
  }

  @Property
  void saturatedAir_hasOneTemperature(
      @ForAll @DoubleRange(min = -40, max = 60) double temperatureC) {
    MoistAir air = new MoistAir(temperatureC, 100, StandardAtmosphere.SEA_LEVEL_PA);
    assertThat(air.dewPointC()).isCloseTo(temperatureC, within(1e-6));
    assertThat(air.wetBulbC()).isCloseTo(temperatureC, within(1e-6));
    assertThat(air.vapourPressureDeficitKPa()).isZero();
  }

  @Property
  void moreWater_warmsTheWetBulbAndLightensTheAir(
      @ForAll @DoubleRange(min = -40, max = 60) double temperatureC,
      @ForAll @DoubleRange(min = 0, max = 50) double dryPct,
      @ForAll @DoubleRange(min = 1, max = 50) double morePct) {
    MoistAir dry = new MoistAir(temperatureC, dryPct, StandardAtmosphere.SEA_LEVEL_PA);
    MoistAir damp = new MoistAir(temperatureC, dryPct + morePct, StandardAtmosphere.SEA_LEVEL_PA);
    assertThat(damp.wetBulbC()).isGreaterThan(dry.wetBulbC());
    assertThat(damp.densityKgM3()).isLessThan(dry.densityKgM3());
    assertThat(damp.enthalpyKJKg()).isGreaterThan(dry.enthalpyKJKg());
  }

  /** Water and heat add up per kilogram of dry air, so a mixture lies between what was mixed. */
  @Property
  void mixture_liesBetweenWhatWasMixed(
      @ForAll @DoubleRange(min = -40, max = 60) double oneC,
      @ForAll @DoubleRange(min = -40, max = 60) double otherC,
      @ForAll @DoubleRange(min = 0, max = 0.05) double oneRatio,
      @ForAll @DoubleRange(min = 0, max = 0.05) double otherRatio,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    double ratio = share * oneRatio + (1 - share) * otherRatio;
    double enthalpy =
        share * Psychrometrics.enthalpyKJKg(oneC, oneRatio)
            + (1 - share) * Psychrometrics.enthalpyKJKg(otherC, otherRatio);
    double mixedC = Psychrometrics.temperatureOfEnthalpyC(enthalpy, ratio);
    assertThat(mixedC).isBetween(Math.min(oneC, otherC) - 1e-9, Math.max(oneC, otherC) + 1e-9);
  }

  @Provide
  Arbitrary<MoistAir> states() {
    return Combinators.combine(
            Arbitraries.doubles().between(-40, 60).ofScale(3),
            Arbitraries.doubles().between(0, 100).ofScale(3),
            Arbitraries.doubles().between(-500, 4000).ofScale(1))
        .as((t, rh, z) -> new MoistAir(t, rh, StandardAtmosphere.pressurePa(z)));
  }
}
