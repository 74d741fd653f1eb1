package rindward.controller.diagnosis;

import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * The air of a place in one tick, as the watch of a room looks at it.
 *
 * @param temperatureC NaN if unknown
 * @param vapourPa NaN if unknown
 * @param saturationPa what the vapour could be at that temperature
 */
public record WatchedAir(double temperatureC, double vapourPa, double saturationPa) {
  /**
   * Returns the air of a picture.
   *
   * @param temperatureMilliC thousandths, or {@link Thousandths#NONE}
   * @param humidityMilliPct thousandths, or {@link Thousandths#NONE}
   */
  public static WatchedAir of(int temperatureMilliC, int humidityMilliPct) {
    if (temperatureMilliC == Thousandths.NONE) {
      return new WatchedAir(Double.NaN, Double.NaN, Double.NaN);
    }
    double temperatureC = Thousandths.toDouble(temperatureMilliC);
    double saturationPa = SaturationPressure.overIceOrWaterPa(temperatureC);
    return new WatchedAir(
        temperatureC, Thousandths.toDouble(humidityMilliPct) / 100 * saturationPa, saturationPa);
  }
}
