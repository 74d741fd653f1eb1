package rindward.controller.estimate;

import rindward.controller.room.Picture;

/**
 * How an estimate that was kept over a restart stands against what is measured since: one of
 * another room, or of a shed that was warm when it was written and is cold now for a reason that
 * nobody told, is thrown away after ten minutes in which nothing of it fitted.
 *
 * @param slowC what the air of an hour was then
 * @param sinceNanos when it was taken up again, monotonic
 * @param isContradicted whether nothing that was measured since has fitted
 */
public record RestartTrial(double slowC, long sinceNanos, boolean isContradicted) {
  private static final long LASTS_NANOS = 600_000_000_000L;

  /**
   * A room that was left alone for hours in the cold may have gone so far; one whose door stands
   * open, too (judgement). Learned figures are about swings of a few kelvin.
   */
  private static final double FITS_WITHIN_K = 8;

  RestartTrial next(Picture picture) {
    if (!isContradicted || !picture.hasTemperature()) {
      return this;
    }
    double measuredC = picture.temperatureMilliC() / 1000.0;
    return Math.abs(measuredC - slowC) <= FITS_WITHIN_K
        ? new RestartTrial(slowC, sinceNanos, false)
        : this;
  }

  boolean isOver(long nanos) {
    return !isContradicted || nanos - sinceNanos >= LASTS_NANOS;
  }

  boolean isLost(long nanos) {
    return isContradicted && nanos - sinceNanos >= LASTS_NANOS;
  }
}
