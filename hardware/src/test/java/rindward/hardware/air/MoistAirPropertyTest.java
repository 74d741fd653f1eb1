package rindward.hardware.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import rindward.hardware.Any;
import rindward.hardware.Seeded;

/** What holds for every state of the air, whatever the figures are. */
class MoistAirPropertyTest {

  @Seeded
  void wetBulb_liesBetweenDewPointAndDryBulb(Any any) {
    MoistAir air = state(any);
    assertThat(air.wetBulbC()).isLessThanOrEqualTo(air.temperatureC());
    // Below zero the iced wick follows the frost point; both meet at saturation.
    if (!Double.isNaN(air.dewPointC())) {
      assertThat(air.wetBulbC()).isGreaterThanOrEqualTo(air.dewPointC() - 1e-6);
    }
  }

  @Seeded
  void wetBulb_givesBackTheHumidityRatio(Any any) {
    MoistAir air = state(any);
    assertThat(WetBulb.humidityRatio(air.temperatureC(), air.wetBulbC(), air.pressurePa()))
        .isCloseTo(air.humidityRatio(), within(1e-9 + 1e-6 * air.humidityRatio()));
  }

  @Seeded
  void humidityRatio_givesBackTheState(Any any) {
    MoistAir air = state(any);
    MoistAir again =
        MoistAir.ofHumidityRatio(air.temperatureC(), air.humidityRatio(), air.pressurePa());
    assertThat(again.relativeHumidityPct()).isCloseTo(air.relativeHumidityPct(), within(1e-9));
  }

  @Seeded
  void airCooledToItsDewPoint_isSaturated(Any any) {
    MoistAir air = state(any);
    double dewPointC = air.dewPointC();
    if (Double.isNaN(dewPointC)) {
      return;
    }
    assertThat(dewPointC).isLessThanOrEqualTo(air.temperatureC() + 1e-6);
    assertThat(Psychrometrics.relativeHumidityPct(dewPointC, air.humidityRatio(), air.pressurePa()))
        .isCloseTo(100, within(1e-4));
  }

  @Seeded
  void saturatedAir_hasOneTemperature(Any any) {
    double temperatureC = any.doubleBetween(-40, 60);
    MoistAir air = new MoistAir(temperatureC, 100, StandardAtmosphere.SEA_LEVEL_PA);
    assertThat(air.dewPointC()).isCloseTo(temperatureC, within(1e-6));
    assertThat(air.wetBulbC()).isCloseTo(temperatureC, within(1e-6));
    assertThat(air.vapourPressureDeficitKPa()).isZero();
  }

  @Seeded
  void moreWater_warmsTheWetBulbAndLightensTheAir(Any any) {
    double temperatureC = any.doubleBetween(-40, 60);
    double dryPct = any.doubleBetween(0, 50);
    double morePct = any.doubleBetween(1, 50);
    MoistAir dry = new MoistAir(temperatureC, dryPct, StandardAtmosphere.SEA_LEVEL_PA);
    MoistAir damp = new MoistAir(temperatureC, dryPct + morePct, StandardAtmosphere.SEA_LEVEL_PA);
    assertThat(damp.wetBulbC()).isGreaterThan(dry.wetBulbC());
    assertThat(damp.densityKgM3()).isLessThan(dry.densityKgM3());
    assertThat(damp.enthalpyKJKg()).isGreaterThan(dry.enthalpyKJKg());
  }

  /** Water and heat add up per kilogram of dry air, so a mixture lies between what was mixed. */
  @Seeded
  void mixture_liesBetweenWhatWasMixed(Any any) {
    double oneC = any.doubleBetween(-40, 60);
    double otherC = any.doubleBetween(-40, 60);
    double oneRatio = any.doubleBetween(0, 0.05);
    double otherRatio = any.doubleBetween(0, 0.05);
    double share = any.doubleBetween(0, 1);
    double ratio = share * oneRatio + (1 - share) * otherRatio;
    double enthalpy =
        share * Psychrometrics.enthalpyKJKg(oneC, oneRatio)
            + (1 - share) * Psychrometrics.enthalpyKJKg(otherC, otherRatio);
    double mixedC = Psychrometrics.temperatureOfEnthalpyC(enthalpy, ratio);
    assertThat(mixedC).isBetween(Math.min(oneC, otherC) - 1e-9, Math.max(oneC, otherC) + 1e-9);
  }

  private static MoistAir state(Any any) {
    return new MoistAir(
        any.doubleBetween(-40, 60),
        any.doubleBetween(0, 100),
        StandardAtmosphere.pressurePa(any.doubleBetween(-500, 4000)));
  }
}
