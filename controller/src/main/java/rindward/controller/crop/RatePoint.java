package rindward.controller.crop;

/**
 * One stated point of a {@link RateCurve}.
 *
 * @param temperatureMilliC air temperature in thousandths of a degree C
 * @param femtoPerMilli cure earned per millisecond, in 1e-15 of a whole cure; not negative, at most
 *     a whole cure in a second
 */
public record RatePoint(int temperatureMilliC, long femtoPerMilli) {
  private static final long MILLIS_PER_DAY = 86_400_000L;

  /** A whole cure in one second; a bound that keeps the arithmetic of the curve inside a long. */
  private static final long FASTEST = RateCurve.WHOLE / 1000;

  public RatePoint {
    if (femtoPerMilli < 0 || femtoPerMilli > FASTEST) {
      throw new IllegalArgumentException(
          "rate was " + femtoPerMilli + " but it must be from 0 to " + FASTEST);
    }
  }

  /**
   * Returns the point at which a whole cure takes {@code days}; rounded up by less than two parts
   * in a million, so that the stated days are always enough.
   *
   * @param milliDays days in thousandths, positive
   */
  public static RatePoint wholeCureIn(int temperatureMilliC, int milliDays) {
    if (milliDays <= 0) {
      throw new IllegalArgumentException("days were " + milliDays + " but they must be positive");
    }
    long millis = MILLIS_PER_DAY / 1000 * milliDays;
    return new RatePoint(temperatureMilliC, (RateCurve.WHOLE + millis - 1) / millis);
  }

  /** Returns the point at which nothing cures. */
  public static RatePoint nothing(int temperatureMilliC) {
    return new RatePoint(temperatureMilliC, 0);
  }
}
