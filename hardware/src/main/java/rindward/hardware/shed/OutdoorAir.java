package rindward.hardware.shed;

import rindward.hardware.air.SaturationPressure;

/**
 * The weather at one moment.
 *
 * @param temperatureC air temperature
 * @param vapourPressurePa vapour pressure of the air
 * @param pressurePa air pressure
 * @param windMPerS wind speed
 * @param globalHorizontalWPerM2 sun on a level surface
 * @param groundC temperature of the ground under the floor
 */
public record OutdoorAir(
    double temperatureC,
    double vapourPressurePa,
    double pressurePa,
    double windMPerS,
    double globalHorizontalWPerM2,
    double groundC) {

  /** Returns relative humidity in percent, at most 100, over ice in frost. */
  public double relativeHumidityPct() {
    return Math.min(
        100, 100 * vapourPressurePa / SaturationPressure.overIceOrWaterPa(temperatureC));
  }

  /** Returns the same with calm, dark, still ground at air temperature; for tests and trials. */
  public static OutdoorAir still(double temperatureC, double relativeHumidityPct) {
    double vapourPa = relativeHumidityPct / 100 * SaturationPressure.overIceOrWaterPa(temperatureC);
    return new OutdoorAir(temperatureC, vapourPa, 101325, 0, 0, temperatureC);
  }
}
