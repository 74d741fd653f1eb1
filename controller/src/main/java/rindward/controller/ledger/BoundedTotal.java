package rindward.controller.ledger;

/**
 * One total, three times: what would still hold if the probe erred against it, what was measured,
 * and what would hold if the probe erred in its favour. Always {@code certain <= measured <=
 * possible}.
 *
 * @param certain the total that the probe's accuracy cannot take away
 * @param measured the total taken at the probe's word
 * @param possible the total that the probe's accuracy cannot rule out
 */
public record BoundedTotal(long certain, long measured, long possible) {
  public static final BoundedTotal ZERO = new BoundedTotal(0, 0, 0);

  public BoundedTotal {
    if (certain > measured || measured > possible) {
      throw new IllegalArgumentException(
          "tally was " + certain + ", " + measured + ", " + possible + " but it must not fall");
    }
  }

  /** Returns the sum, each of the three for itself. */
  public BoundedTotal plus(BoundedTotal other) {
    return new BoundedTotal(
        certain + other.certain, measured + other.measured, possible + other.possible);
  }
}
