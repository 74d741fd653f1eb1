package rindward.controller.ledger;

/**
 * One quantity over time, ready to be drawn from point to point. The arrays are of equal length and
 * shared, not copied.
 *
 * @param atMillis instants, rising, epoch milliseconds UTC
 * @param value in thousandths; {@code Thousandths.NONE} where the line breaks off
 */
public record CurveLine(long[] atMillis, int[] value) {

  /** Returns how many points there are, breaks included. */
  public int size() {
    return atMillis.length;
  }
}
