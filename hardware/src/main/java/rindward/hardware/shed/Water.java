package rindward.hardware.shed;

/**
 * Constants and slopes of water that several parts of the model share. Latent heat: 2501 - 2.361 t
 * kJ/kg, within 0.5 kJ/kg of the steam tables from 0 to 60 C; freezing of films is left out.
 */
final class Water {
  static final double ZERO_C_IN_KELVIN = 273.15;

  /** Gas constant of water vapour, 287.042 / 0.621945 J/(kg K). */
  static final double GAS_CONSTANT = 461.523;

  private Water() {}

  /** Returns the heat of evaporation in J/kg. */
  static double latentJPerKg(double temperatureC) {
    return 2.501e6 - 2361 * temperatureC;
  }

  /** Returns saturation pressure over liquid water, also supercooled, in Pa: the WMO's formula. */
  static double overLiquidPa(double temperatureC) {
    return 611.2 * Math.exp(17.62 * temperatureC / (243.12 + temperatureC));
  }

  /** Clausius and Clapeyron: dp/dT = p h / (Rw T^2), in Pa/K. */
  static double saturationSlopePaPerK(double saturationPa, double temperatureC) {
    double kelvin = temperatureC + ZERO_C_IN_KELVIN;
    return saturationPa * latentJPerKg(temperatureC) / (GAS_CONSTANT * kelvin * kelvin);
  }

  /**
   * Returns the vapour conductance in kg/(s Pa) of a wet surface whose convective heat conductance
   * is given: g = H / (rho cp Rw T), the Lewis relation with a Lewis number of 1.
   */
  static double wetKgPerSPa(double convectiveWPerK, double temperatureC) {
    return convectiveWPerK
        / (RoomPlan.AIR_J_PER_M3_K * GAS_CONSTANT * (temperatureC + ZERO_C_IN_KELVIN));
  }
}
