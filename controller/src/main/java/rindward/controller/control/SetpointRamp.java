package rindward.controller.control;

import rindward.controller.crop.Limits;
import rindward.controller.crop.Range;
import rindward.controller.room.Picture;
import rindward.controller.room.RoomDemand;

/**
 * Moves the range that is controlled to down from where the room is to where it should be, no
 * faster than ordered; up it goes at once, for warming is never held back. It begins at the
 * measured temperature, and after a gap goes on from where it was; the account of a lot never sees
 * it.
 */
public final class SetpointRamp {
  private static final double LONGEST_STEP_SECONDS = 300;

  private SetpointRamp() {}

  /** Returns the middle of the temperature range to control to; NaN while nothing is known. */
  public static double next(double middleC, RoomDemand demand, Picture picture, double seconds) {
    if (demand.range() == null) {
      return Double.NaN;
    }
    double goalC = demand.range().temperature().middle() / 1000.0;
    if (demand.slideMilliCPerDay() == 0) {
      return goalC;
    }
    if (!picture.hasTemperature()) {
      return middleC;
    }
    if (Double.isNaN(middleC)) {
      return picture.temperatureMilliC() / 1000.0;
    }
    if (seconds > LONGEST_STEP_SECONDS) {
      return middleC;
    }
    double stepK = demand.slideMilliCPerDay() / 1000.0 / 86_400 * seconds;
    return Math.max(goalC, middleC - stepK);
  }

  /** Returns a range moved to that middle; its humidity stays. */
  public static Range range(Range ordered, double middleC) {
    Limits wanted = ordered.temperature();
    int shift = Double.isNaN(middleC) ? 0 : (int) Math.round(middleC * 1000) - wanted.middle();
    return shift == 0
        ? ordered
        : new Range(new Limits(wanted.low() + shift, wanted.high() + shift), ordered.humidity());
  }
}
