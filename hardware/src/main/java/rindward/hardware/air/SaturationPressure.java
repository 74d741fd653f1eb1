package rindward.hardware.air;

/**
 * Pressure of water vapour in balance with ice or liquid water, and its inverse. ASHRAE
 * Fundamentals 2017 ch. 1 eq. 5 (ice) and 6 (liquid), the Hyland-Wexler fit:
 *
 * <pre>ln p = c0/T + c1 + c2 T + c3 T^2 + c4 T^3 + c5 T^4 + c6 ln T     (p in Pa, T in kelvin)
 * </pre>
 *
 * The two meet at the triple point, 0.01 C, and not at 0 C, where they differ by 0.06 Pa. Below the
 * triple point a saturated state is one over ice; meteorological sensors refer humidity below zero
 * to liquid water, where the same vapour reads about 10 % lower at -10 C.
 */
public final class SaturationPressure {
  /** Where ice, water and vapour meet, in degrees C. */
  public static final double TRIPLE_POINT_C = 0.01;

  /** Lowest temperature of the ice equation, in degrees C. */
  public static final double LOWEST_C = -100;

  /** Highest temperature of the liquid equation, in degrees C. */
  public static final double HIGHEST_C = 200;

  static final double ZERO_C_IN_KELVIN = 273.15;

  private static final double LOWEST_PA = overIceOrWaterPa(LOWEST_C);
  private static final double HIGHEST_PA = overIceOrWaterPa(HIGHEST_C);
  private static final double TRIPLE_POINT_PA = overIceOrWaterPa(TRIPLE_POINT_C);

  private SaturationPressure() {}

  /**
   * Returns the saturation pressure in Pa at {@code temperatureC} in -100..200: over ice up to the
   * triple point, over liquid water above it.
   */
  public static double overIceOrWaterPa(double temperatureC) {
    Bounds.require("temperature", temperatureC, LOWEST_C, HIGHEST_C, " C");
    double kelvin = temperatureC + ZERO_C_IN_KELVIN;
    return Math.exp(temperatureC <= TRIPLE_POINT_C ? logOverIce(kelvin) : logOverWater(kelvin));
  }

  /**
   * Returns the temperature in degrees C at which {@code pressurePa} saturates: the dew point, or
   * below the triple point the frost point. Newton on the logarithm, to better than 0.000001 K.
   *
   * @return NaN for no vapour at all, and for less of it than saturates at -100 C
   * @throws IllegalArgumentException for a pressure below zero or above that of 200 C
   */
  public static double temperatureC(double pressurePa) {
    Bounds.require("vapour pressure", pressurePa, 0, HIGHEST_PA, " Pa");
    if (pressurePa < LOWEST_PA) {
      return Double.NaN;
    }
    double log = Math.log(pressurePa);
    boolean ice = pressurePa <= TRIPLE_POINT_PA;
    double kelvin = firstGuessKelvin(log, ice);
    for (int i = 0; i < 20; i++) {
      double miss = (ice ? logOverIce(kelvin) : logOverWater(kelvin)) - log;
      double step = miss / (ice ? slopeOverIce(kelvin) : slopeOverWater(kelvin));
      kelvin -= step;
      if (Math.abs(step) < 1e-8) {
        break;
      }
    }
    return kelvin - ZERO_C_IN_KELVIN;
  }

  /** Returns the slope d(ln p)/dT of the saturation curve per kelvin. */
  static double logSlope(double temperatureC) {
    double kelvin = temperatureC + ZERO_C_IN_KELVIN;
    return temperatureC <= TRIPLE_POINT_C ? slopeOverIce(kelvin) : slopeOverWater(kelvin);
  }

  // Magnus: ln p = ln 611.2 + a t/(b + t), with the WMO's a and b over water and over ice.
  private static double firstGuessKelvin(double log, boolean ice) {
    double a = ice ? 22.46 : 17.62;
    double b = ice ? 272.62 : 243.12;
    double g = log - 6.415425;
    return b * g / (a - g) + ZERO_C_IN_KELVIN;
  }

  private static double logOverIce(double kelvin) {
    return -5.6745359e3 / kelvin
        + 6.3925247
        + kelvin
            * (-9.677843e-3
                + kelvin * (6.2215701e-7 + kelvin * (2.0747825e-9 + kelvin * -9.484024e-13)))
        + 4.1635019 * Math.log(kelvin);
  }

  private static double logOverWater(double kelvin) {
    return -5.8002206e3 / kelvin
        + 1.3914993
        + kelvin * (-4.8640239e-2 + kelvin * (4.1764768e-5 + kelvin * -1.4452093e-8))
        + 6.5459673 * Math.log(kelvin);
  }

  private static double slopeOverIce(double kelvin) {
    return (5.6745359e3 / kelvin + 4.1635019) / kelvin
        - 9.677843e-3
        + kelvin * (2 * 6.2215701e-7 + kelvin * (3 * 2.0747825e-9 + kelvin * 4 * -9.484024e-13));
  }

  private static double slopeOverWater(double kelvin) {
    return (5.8002206e3 / kelvin + 6.5459673) / kelvin
        - 4.8640239e-2
        + kelvin * (2 * 4.1764768e-5 + kelvin * 3 * -1.4452093e-8);
  }
}
