package rindward.controller.ledger;

/**
 * Samples of one room at even spacing: the piece in which a history is stored, read and counted. A
 * lone sample is a run of one. The arrays are shared, not copied; whoever holds a run only reads
 * it.
 *
 * @param startMillis instant of the first sample, epoch milliseconds UTC
 * @param stepMillis distance between samples, above zero
 * @param count how many samples, at least one; the arrays may be longer
 * @param temperatureMilliC thousandths of a degree C, {@code Thousandths.NONE} where not measured
 * @param humidityMilliPct thousandths of a percent, {@code Thousandths.NONE} where not measured
 */
public record Run(
    long startMillis, int stepMillis, int count, int[] temperatureMilliC, int[] humidityMilliPct) {

  public Run {
    if (stepMillis <= 0 || count <= 0) {
      throw new IllegalArgumentException(
          "a run had "
              + count
              + " samples "
              + stepMillis
              + " ms apart but both must be above zero");
    }
    if (temperatureMilliC.length < count || humidityMilliPct.length < count) {
      throw new IllegalArgumentException(
          "a run of " + count + " samples came with fewer values than that");
    }
  }

  /** Returns a run of one sample. */
  public static Run of(long atMillis, int temperatureMilliC, int humidityMilliPct) {
    return new Run(atMillis, 1, 1, new int[] {temperatureMilliC}, new int[] {humidityMilliPct});
  }

  /** Returns the instant of the last sample. */
  public long lastMillis() {
    return startMillis + (long) stepMillis * (count - 1);
  }
}
