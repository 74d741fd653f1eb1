package rindward.controller.crop;

import java.util.Optional;

/**
 * What the humidity of the air does to a cure: nothing between the two limits, and on either side
 * whatever that side says. A missing side never matters.
 *
 * @param dry below its limit
 * @param damp above its limit, which does not lie below that of {@code dry}
 */
public record HumidityEffect(Optional<HumiditySide> dry, Optional<HumiditySide> damp) {
  private static final int LEAST = 0;
  private static final int MOST = 100_000;

  public HumidityEffect {
    dry.ifPresent(
        side -> {
          if (side.until().value() > side.limit().value()) {
            throw new IllegalArgumentException(
                "the dry side began at "
                    + side.limit().value()
                    + " and went up to "
                    + side.until().value()
                    + " but it must go down");
          }
        });
    damp.ifPresent(
        side -> {
          if (side.until().value() < side.limit().value()) {
            throw new IllegalArgumentException(
                "the damp side began at "
                    + side.limit().value()
                    + " and went down to "
                    + side.until().value()
                    + " but it must go up");
          }
        });
    if (low(dry) > high(damp)) {
      throw new IllegalArgumentException(
          "the dry limit was "
              + low(dry)
              + " and the damp limit "
              + high(damp)
              + " but the dry one must not lie above");
    }
  }

  /**
   * Returns what is left of the rate of curing, in thousandths, 0 to 1000.
   *
   * @param humidity relative humidity in thousandths of a percent
   */
  public int factor(int humidity) {
    return side(humidity)
        .map(side -> side.factorPast(Math.abs(humidity - side.limit().value())))
        .orElse(HumiditySide.WHOLE);
  }

  /** Returns the side the humidity is on; empty between the limits and exactly on one. */
  public Optional<HumiditySide> side(int humidity) {
    if (humidity < low(dry)) {
      return dry;
    }
    return humidity > high(damp) ? damp : Optional.empty();
  }

  /** Returns the least factor anywhere from {@code low} to {@code high}, both included. */
  public int minimumWithin(int low, int high) {
    return Math.min(factor(low), factor(high));
  }

  /** Returns the greatest factor anywhere from {@code low} to {@code high}, both included. */
  public int maximumWithin(int low, int high) {
    boolean touchesTheGoodPart = low <= high(damp) && high >= low(dry);
    return touchesTheGoodPart ? HumiditySide.WHOLE : Math.max(factor(low), factor(high));
  }

  private static int low(Optional<HumiditySide> dry) {
    return dry.map(side -> side.limit().value()).orElse(LEAST);
  }

  private static int high(Optional<HumiditySide> damp) {
    return damp.map(side -> side.limit().value()).orElse(MOST);
  }
}
