package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.controller.estimate.AirEstimate;
import rindward.hardware.air.SaturationPressure;

/**
 * How much water the air of a room should hold, as vapour pressure in Pa, so that it is neither too
 * dry in the warmest moments of the heater's swing nor too damp in the coldest. Judging water
 * instead of relative humidity keeps a heater's pulses from switching humidifier and fan.
 *
 * @param startPa below this it is humidified
 * @param stopPa up to this
 * @param dampPa above this it is dried
 */
public record VapourPressureBand(double startPa, double stopPa, double dampPa) {
  /** Humidifying starts this share of the way from the driest to the dampest that is allowed. */
  private static final double START = 0.15;

  private static final double STOP = 0.45;

  /**
   * Where the swing leaves no room between the two, it works about their middle, in a band twice
   * this wide: a little above it, since water is lost all the time.
   */
  private static final double ABOUT_MIDDLE = 0.01;

  /** Never dried below what was humidified to, and this much more. */
  private static final double CLEAR_OF_STOP = 1.04;

  /**
   * @param sure the humidity limits, moved inward by what the probes may be wrong by
   */
  static VapourPressureBand of(Limits sure, AirEstimate air) {
    double lowPa = sure.low() / 100_000.0 * SaturationPressure.overIceOrWaterPa(air.highC());
    double highPa = sure.high() / 100_000.0 * SaturationPressure.overIceOrWaterPa(air.lowC());
    double startPa = lowPa + START * (highPa - lowPa);
    double stopPa = lowPa + STOP * (highPa - lowPa);
    if (stopPa - startPa < 2 * ABOUT_MIDDLE * lowPa) {
      double middlePa = (lowPa + highPa) / 2;
      startPa = middlePa * (1 - ABOUT_MIDDLE / 2);
      stopPa = middlePa * (1 + 1.5 * ABOUT_MIDDLE);
    }
    return new VapourPressureBand(startPa, stopPa, Math.max(highPa, stopPa * CLEAR_OF_STOP));
  }
}
