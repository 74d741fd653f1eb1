package rindward.hardware.air;

/**
 * The thermodynamic wet-bulb temperature: what air cools to when water evaporates into it until it
 * is saturated. ASHRAE Fundamentals 2017 ch. 1 eq. 33 (liquid water, t* at or above 0 C) and 35
 * (ice, below). With t the dry bulb, W the humidity ratio and W* its saturated value at t*:
 *
 * <pre>
 * W (2501 + 1.86 t - 4.186 t*) = (2501 - 2.326 t*) W* - 1.006 (t - t*)     water
 * W (2830 + 1.86 t - 2.1 t*)   = (2830 - 0.24 t*) W*  - 1.006 (t - t*)     ice
 * </pre>
 *
 * The two do not meet at t* = 0: for a band of humidity ratios both have a solution, a wet wick
 * above zero and an iced one below. The wet one is given wherever it exists.
 */
public final class WetBulb {
  private WetBulb() {}

  /** Returns the wet-bulb temperature in degrees C to better than 0.000001 K; never above t. */
  public static double temperatureC(double temperatureC, double humidityRatio, double pressurePa) {
    Psychrometrics.requireRatio(humidityRatio);
    if (temperatureC >= 0 && excess(0, temperatureC, humidityRatio, pressurePa) <= 0) {
      return solve(temperatureC, false, temperatureC, humidityRatio, pressurePa);
    }
    return solve(Math.min(temperatureC, 0), true, temperatureC, humidityRatio, pressurePa);
  }

  /** Returns the humidity ratio in kg/kg of air with the given dry and wet bulb, in degrees C. */
  public static double humidityRatio(double temperatureC, double wetBulbC, double pressurePa) {
    if (!(wetBulbC <= temperatureC)) {
      throw new IllegalArgumentException(
          "wet bulb was "
              + wetBulbC
              + " C but it must not be above the dry bulb of "
              + temperatureC
              + " C");
    }
    double divisor =
        wetBulbC < 0
            ? 2830 + 1.86 * temperatureC - 2.1 * wetBulbC
            : 2501 + 1.86 * temperatureC - 4.186 * wetBulbC;
    double ratio = excess(wetBulbC, temperatureC, 0, pressurePa) / divisor;
    if (ratio < -1e-9) {
      throw new IllegalArgumentException(
          "wet bulb was "
              + wetBulbC
              + " C but even dry air of "
              + temperatureC
              + " C does not cool that far");
    }
    return Math.max(ratio, 0);
  }

  // Newton from the right of the root: the excess is convex and rises, so each step stays right of
  // it and the search needs no bracket.
  private static double solve(
      double start, boolean ice, double temperatureC, double humidityRatio, double pressurePa) {
    double wet = start;
    for (int i = 0; i < 50; i++) {
      double step =
          excess(wet, ice, temperatureC, humidityRatio, pressurePa)
              / slope(wet, ice, humidityRatio, pressurePa);
      wet -= step;
      if (Math.abs(step) < 1e-7) {
        break;
      }
    }
    return Math.min(wet, temperatureC);
  }

  private static double excess(double wet, double dry, double ratio, double pressurePa) {
    return excess(wet, wet < 0, dry, ratio, pressurePa);
  }

  private static double excess(
      double wet, boolean ice, double dry, double ratio, double pressurePa) {
    double saturated =
        Psychrometrics.humidityRatio(SaturationPressure.overIceOrWaterPa(wet), pressurePa);
    double evaporated =
        ice
            ? (2830 - 0.24 * wet) * saturated - ratio * (2830 + 1.86 * dry - 2.1 * wet)
            : (2501 - 2.326 * wet) * saturated - ratio * (2501 + 1.86 * dry - 4.186 * wet);
    return evaporated - 1.006 * (dry - wet);
  }

  private static double slope(double wet, boolean ice, double ratio, double pressurePa) {
    double vapour = SaturationPressure.overIceOrWaterPa(wet);
    double dryPart = pressurePa - vapour;
    double saturated = Psychrometrics.MASS_RATIO * vapour / dryPart;
    // dW*/dt = W* (d ln p/dt) P/(P - p)
    double rise = saturated * SaturationPressure.logSlope(wet) * pressurePa / dryPart;
    return ice
        ? (2830 - 0.24 * wet) * rise - 0.24 * saturated + 1.006 + 2.1 * ratio
        : (2501 - 2.326 * wet) * rise - 2.326 * saturated + 1.006 + 4.186 * ratio;
  }
}
