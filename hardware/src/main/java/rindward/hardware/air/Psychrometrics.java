package rindward.hardware.air;

/**
 * The equations of moist air that need no search, ASHRAE Fundamentals 2017 ch. 1. Masses and
 * energies are per kilogram of dry air: it stays the same while water comes and goes. Allocates
 * nothing.
 */
public final class Psychrometrics {
  /** Mass of a molecule of water over that of dry air. */
  static final double MASS_RATIO = 0.621945;

  static final double LOWEST_PRESSURE_PA = 22_000;
  static final double HIGHEST_PRESSURE_PA = 180_000;

  private static final double DRY_AIR_J_KG_K = 287.042;
  private static final double VAPOUR_J_KG_K = 461.523;

  private Psychrometrics() {}

  /** Returns the vapour pressure in Pa of air at a relative humidity in 0..100 %. */
  public static double vapourPressurePa(double temperatureC, double relativeHumidityPct) {
    requireHumidity(relativeHumidityPct);
    return relativeHumidityPct / 100 * SaturationPressure.overIceOrWaterPa(temperatureC);
  }

  /** Returns kilograms of water per kilogram of dry air; eq. 20. */
  public static double humidityRatio(double vapourPressurePa, double pressurePa) {
    requirePressure(pressurePa);
    if (!(0 <= vapourPressurePa && vapourPressurePa < pressurePa)) {
      throw new IllegalArgumentException(
          "vapour pressure was "
              + vapourPressurePa
              + " Pa but it must lie between zero and the air pressure of "
              + pressurePa
              + " Pa");
    }
    return MASS_RATIO * vapourPressurePa / (pressurePa - vapourPressurePa);
  }

  /**
   * Returns the vapour pressure in Pa that {@code humidityRatio} (kg/kg) means; eq. 20 inverted.
   */
  public static double vapourPressureOfRatioPa(double humidityRatio, double pressurePa) {
    requirePressure(pressurePa);
    requireRatio(humidityRatio);
    return pressurePa * humidityRatio / (MASS_RATIO + humidityRatio);
  }

  /**
   * Returns the relative humidity in percent of air with {@code humidityRatio} (kg/kg); above 100
   * where it holds more water than it can, so that a simulation sees how much must condense.
   */
  public static double relativeHumidityPct(
      double temperatureC, double humidityRatio, double pressurePa) {
    return 100
        * vapourPressureOfRatioPa(humidityRatio, pressurePa)
        / SaturationPressure.overIceOrWaterPa(temperatureC);
  }

  /** Returns grams of water in a cubic metre of air; the ideal gas law for vapour. */
  public static double absoluteHumidityGM3(double temperatureC, double vapourPressurePa) {
    return 1000 * vapourPressurePa / (VAPOUR_J_KG_K * kelvin(temperatureC));
  }

  /** Returns the enthalpy in kJ per kg of dry air, zero for dry air at 0 C; eq. 30. */
  public static double enthalpyKJKg(double temperatureC, double humidityRatio) {
    requireRatio(humidityRatio);
    return 1.006 * temperatureC + humidityRatio * (2501 + 1.86 * temperatureC);
  }

  /** Returns the temperature in degrees C of air with the given enthalpy; eq. 30 inverted. */
  public static double temperatureOfEnthalpyC(double enthalpyKJKg, double humidityRatio) {
    requireRatio(humidityRatio);
    return (enthalpyKJKg - 2501 * humidityRatio) / (1.006 + 1.86 * humidityRatio);
  }

  /** Returns the volume in m3 that holds a kilogram of dry air and its water; eq. 26. */
  public static double specificVolumeM3Kg(
      double temperatureC, double humidityRatio, double pressurePa) {
    requirePressure(pressurePa);
    requireRatio(humidityRatio);
    return DRY_AIR_J_KG_K * kelvin(temperatureC) * (1 + 1.607858 * humidityRatio) / pressurePa;
  }

  /** Returns the mass in kg of a cubic metre of air, its water included. */
  public static double densityKgM3(double temperatureC, double humidityRatio, double pressurePa) {
    return (1 + humidityRatio) / specificVolumeM3Kg(temperatureC, humidityRatio, pressurePa);
  }

  static void requireHumidity(double relativeHumidityPct) {
    Bounds.require("relative humidity", relativeHumidityPct, 0, 100, " %");
  }

  static void requirePressure(double pressurePa) {
    Bounds.require("air pressure", pressurePa, LOWEST_PRESSURE_PA, HIGHEST_PRESSURE_PA, " Pa");
  }

  static void requireRatio(double humidityRatio) {
    Bounds.require("humidity ratio", humidityRatio, 0, Double.MAX_VALUE, " kg/kg");
  }

  private static double kelvin(double temperatureC) {
    return temperatureC + SaturationPressure.ZERO_C_IN_KELVIN;
  }
}
