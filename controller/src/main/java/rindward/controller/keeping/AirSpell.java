package rindward.controller.keeping;

import java.time.Duration;
import rindward.hardware.Thousandths;
import rindward.hardware.air.MoistAir;

/**
 * A stretch of time in air that stayed the same, or was averaged.
 *
 * @param temperatureMilliC thousandths of a degree C
 * @param humidityMilliPct thousandths of a percent relative humidity
 * @param time how long it lasted
 */
public record AirSpell(int temperatureMilliC, int humidityMilliPct, Duration time) {
  /** A deficit is the same at any air pressure; this one only completes the state. */
  private static final double SEA_LEVEL_PA = 101_325;

  /** Returns the drying of this spell: its vapour-pressure deficit in Pa times its seconds. */
  double deficitPaSeconds() {
    MoistAir air =
        new MoistAir(
            Thousandths.toDouble(temperatureMilliC),
            Thousandths.toDouble(humidityMilliPct),
            SEA_LEVEL_PA);
    return 1000 * air.vapourPressureDeficitKPa() * time.toSeconds();
  }
}
