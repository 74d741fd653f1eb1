package rindward.hardware.air;

/**
 * One state of the air in a room or outside, and everything that follows from it. A simulation that
 * must not allocate calls {@link Psychrometrics}, {@link SaturationPressure} and {@link WetBulb}
 * itself.
 *
 * @param temperatureC dry bulb in degrees C, -40..60
 * @param relativeHumidityPct percent of saturation, 0..100; below 0.01 C over ice
 * @param pressurePa local air pressure in Pa, 22000..180000; see {@link StandardAtmosphere}
 */
public record MoistAir(double temperatureC, double relativeHumidityPct, double pressurePa) {
  /** Lowest temperature of a state, in degrees C. */
  public static final double LOWEST_C = -40;

  /** Highest temperature of a state, in degrees C. */
  public static final double HIGHEST_C = 60;

  public MoistAir {
    Bounds.require("temperature", temperatureC, LOWEST_C, HIGHEST_C, " C");
    Psychrometrics.requireHumidity(relativeHumidityPct);
    Psychrometrics.requirePressure(pressurePa);
  }

  /**
   * Returns the air that holds {@code humidityRatio} kg of water per kg of dry air.
   *
   * @throws IllegalArgumentException if air of this temperature cannot hold so much
   */
  public static MoistAir ofHumidityRatio(
      double temperatureC, double humidityRatio, double pressurePa) {
    Bounds.require("temperature", temperatureC, LOWEST_C, HIGHEST_C, " C");
    double humidityPct =
        Psychrometrics.relativeHumidityPct(temperatureC, humidityRatio, pressurePa);
    // Saturated air that went to a ratio and back may miss 100 by the last bits of a double.
    boolean saturated = humidityPct > 100 && humidityPct < 100 + 1e-9;
    return new MoistAir(temperatureC, saturated ? 100 : humidityPct, pressurePa);
  }

  /** Returns the pressure in Pa of the water vapour alone. */
  public double vapourPressurePa() {
    return Psychrometrics.vapourPressurePa(temperatureC, relativeHumidityPct);
  }

  /**
   * Returns the temperature in degrees C at which this air, cooled, begins to wet a surface, or
   * below the triple point to frost it. NaN for air so dry that there is none.
   */
  public double dewPointC() {
    return SaturationPressure.temperatureC(vapourPressurePa());
  }

  /** Returns kilograms of water per kilogram of dry air. */
  public double humidityRatio() {
    return Psychrometrics.humidityRatio(vapourPressurePa(), pressurePa);
  }

  /** Returns grams of water in a cubic metre. */
  public double absoluteHumidityGM3() {
    return Psychrometrics.absoluteHumidityGM3(temperatureC, vapourPressurePa());
  }

  /** Returns the temperature in degrees C of a wet (below zero, an iced) surface in this air. */
  public double wetBulbC() {
    return WetBulb.temperatureC(temperatureC, humidityRatio(), pressurePa);
  }

  /** Returns how much more vapour this air could take, in kPa: what dries the fruit. */
  public double vapourPressureDeficitKPa() {
    double saturated = SaturationPressure.overIceOrWaterPa(temperatureC);
    return (1 - relativeHumidityPct / 100) * saturated / 1000;
  }

  /** Returns the enthalpy in kJ per kg of dry air. */
  public double enthalpyKJKg() {
    return Psychrometrics.enthalpyKJKg(temperatureC, humidityRatio());
  }

  /** Returns the mass of a cubic metre in kg, its water included. */
  public double densityKgM3() {
    return Psychrometrics.densityKgM3(temperatureC, humidityRatio(), pressurePa);
  }

  /** Returns the volume in m3 that holds a kilogram of dry air. */
  public double specificVolumeM3Kg() {
    return Psychrometrics.specificVolumeM3Kg(temperatureC, humidityRatio(), pressurePa);
  }
}
