package rindward.controller.ledger;

/**
 * How far a probe's value may lie from the truth, as its maker or its calibration states it.
 *
 * @param temperatureMilliC plus or minus, thousandths of a degree C, not negative
 * @param humidityMilliPct plus or minus, thousandths of a percent, not negative
 */
public record Accuracy(int temperatureMilliC, int humidityMilliPct) {
  /** A probe that is taken at its word. */
  public static final Accuracy EXACT = new Accuracy(0, 0);

  public Accuracy {
    if (temperatureMilliC < 0 || humidityMilliPct < 0) {
      throw new IllegalArgumentException(
          "accuracy was "
              + temperatureMilliC
              + ", "
              + humidityMilliPct
              + " but neither may be below zero");
    }
  }
}
