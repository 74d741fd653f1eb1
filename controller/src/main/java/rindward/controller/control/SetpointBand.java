package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.ledger.Accuracy;
import rindward.controller.room.Stock;
import rindward.hardware.Thousandths;
import rindward.hardware.air.SaturationPressure;

/**
 * Where in its range a room is kept: the band the heater works in, and the vapour that suits it.
 * All temperatures in thousandths of a degree C.
 *
 * @param floor what the air must not fall below: the range's lower limit or, above it, the
 *     temperature below which the stock is chilled
 * @param start the heater starts below this
 * @param stop and stops above this
 * @param ceiling the range's upper limit, as far as the probe can tell
 * @param isNarrow whether the range is narrower than the room can hold
 * @param isRaised whether start and stop are higher than they need be, to make damp air drier
 */
public record SetpointBand(
    int floor, int start, int stop, int ceiling, boolean isNarrow, boolean isRaised) {
  /** Never hug a chilling threshold: so much above it and the probe's accuracy. */
  private static final int ABOVE_CHILLING = 500;

  private static final int ABOVE_LIMIT = 300;

  /** How far the air falls below its mean between two ticks of heat, of the heater's swing. */
  private static final double DIP_SHARE = 0.08;

  private static final int LEAST_BAND = 1_000;

  /** Wider than one swing, or the air would cross the band without walls and fruit following. */
  private static final int SWINGS_PER_MILLE = 1_300;

  private static final int WIDEST_BAND = 3_500;

  /**
   * Air is warmed to hold this much less than the upper humidity limit, thousandths of a percent.
   */
  private static final int DRIER_BY = 3_000;

  /** But never closer to the upper temperature limit than this. */
  private static final int BELOW_UPPER = 1_000;

  /**
   * @param swing how far the room's air moves in one run of its heater
   * @param vapourPa vapour pressure of the air, NaN if unknown
   */
  public static SetpointBand of(
      Range range, Accuracy accuracy, Stock stock, int swing, double vapourPa) {
    Limits wanted = range.temperature();
    int doubt = accuracy.temperatureMilliC();
    int floor = wanted.low();
    int margin = ABOVE_LIMIT;
    if (stock.mindsCold() && stock.chillingMilliC() >= wanted.low() - ABOVE_CHILLING) {
      floor = Math.max(floor, Math.min(stock.chillingMilliC(), wanted.high()));
      margin = ABOVE_CHILLING;
    }
    int ceiling = wanted.high() - doubt;
    int band = band(range, accuracy, swing);
    int start = floor + doubt + margin;
    int stop = start + band;
    if (stop > ceiling) {
      band = Math.max(LEAST_BAND, ceiling - start);
      stop = start + band;
    }
    boolean isNarrow = stop > ceiling;
    if (isNarrow) {
      int middle = Math.floorDiv(floor + wanted.high(), 2);
      start = Math.max(floor, middle - band / 2);
      stop = start + band;
    }
    int raised = Math.min(dryingC(range, vapourPa), wanted.high() - BELOW_UPPER - band / 2);
    boolean isRaised = raised > start;
    return isRaised
        ? new SetpointBand(floor, raised, raised + band, ceiling, isNarrow, true)
        : new SetpointBand(floor, start, stop, ceiling, isNarrow, false);
  }

  /**
   * Returns where a heater that is given in whole ticks aims: so far above the start that the dips
   * between two ticks of heat stay above it.
   */
  public double aimC(double heaterSwingK) {
    return start / 1000.0 + DIP_SHARE * heaterSwingK;
  }

  /** Wide enough that the heater need not hunt, but no wider than the humidity range lets. */
  private static int band(Range range, Accuracy accuracy, int swing) {
    int humidityWidth = Math.max(0, range.humidity().width() - 2 * accuracy.humidityMilliPct()) / 5;
    int byHumidity = Math.max(LEAST_BAND, humidityWidth);
    return Math.max(
        LEAST_BAND, Math.min(Math.min(swing * SWINGS_PER_MILLE / 1_000, byHumidity), WIDEST_BAND));
  }

  private static int dryingC(Range range, double vapourPa) {
    if (Double.isNaN(vapourPa) || !(vapourPa > 1)) {
      return Integer.MIN_VALUE;
    }
    double wantedShare = (range.humidity().high() - DRIER_BY) / 100_000.0;
    return Thousandths.of(SaturationPressure.temperatureC(vapourPa / wantedShare));
  }
}
