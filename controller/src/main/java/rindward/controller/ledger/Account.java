package rindward.controller.ledger;

/**
 * How long something spent where. In range, out of range and unknown always make up the elapsed
 * time; the four ways of being out of range may overlap (cold and damp). Accounts of adjoining
 * stretches add up.
 *
 * @param elapsedMillis the whole stretch
 * @param unknownMillis time of which it cannot be said whether it was in range; never credited
 * @param inRange temperature and humidity both inside, milliseconds
 * @param tooCold below the lower temperature limit, milliseconds
 * @param tooWarm above the upper temperature limit, milliseconds
 * @param tooDry below the lower humidity limit, milliseconds
 * @param tooDamp above the upper humidity limit, milliseconds
 */
public record Account(
    long elapsedMillis,
    long unknownMillis,
    BoundedTotal inRange,
    BoundedTotal tooCold,
    BoundedTotal tooWarm,
    BoundedTotal tooDry,
    BoundedTotal tooDamp) {

  /** No time at all. */
  public static final Account EMPTY =
      new Account(
          0,
          0,
          BoundedTotal.ZERO,
          BoundedTotal.ZERO,
          BoundedTotal.ZERO,
          BoundedTotal.ZERO,
          BoundedTotal.ZERO);

  /** Returns an account of time about which nothing is known. */
  public static Account unknown(long millis) {
    return new Account(
        millis,
        millis,
        BoundedTotal.ZERO,
        BoundedTotal.ZERO,
        BoundedTotal.ZERO,
        BoundedTotal.ZERO,
        BoundedTotal.ZERO);
  }

  /** Returns the time measured outside the range, for whatever reason. */
  public long outOfRangeMillis() {
    return elapsedMillis - unknownMillis - inRange.measured();
  }

  /** Returns the account of both stretches together. */
  public Account plus(Account other) {
    return new Account(
        elapsedMillis + other.elapsedMillis,
        unknownMillis + other.unknownMillis,
        inRange.plus(other.inRange),
        tooCold.plus(other.tooCold),
        tooWarm.plus(other.tooWarm),
        tooDry.plus(other.tooDry),
        tooDamp.plus(other.tooDamp));
  }
}
