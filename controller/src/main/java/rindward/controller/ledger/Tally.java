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
public record Tally(long certain, long measured, long possible) {
  public static final Tally ZERO = new Tally(0, 0, 0);

  public Tally {
    if (certain > measured || measured > possible) {
      throw new IllegalArgumentException(
          "tally was " + certain + ", " + measured + ", " + possible + " but it must not fall");
    }
  }

  /** Returns the sum, each of the three for itself. */
  public Tally plus(Tally other) {
    return new Tally(certain + other.certain, measured + other.measured, possible + other.possible);
  }
}
