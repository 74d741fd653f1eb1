package rindward.controller.crop;

import java.util.List;

/**
 * How fast a crop cures by air temperature: straight lines between stated points, nothing outside
 * them. Integers all through, so that a sum does not depend on how time was cut up. Immutable.
 */
public final class RateCurve {
  /** A whole cure, in the unit of progress: 1e-15 of a cure. */
  public static final long WHOLE = 1_000_000_000_000_000L;

  private final List<Cited<RatePoint>> points;
  private final int[] temperatures;
  private final long[] rates;

  /**
   * @param points at least one, from cold to warm, no temperature twice
   */
  public RateCurve(List<Cited<RatePoint>> points) {
    this.points = List.copyOf(points);
    this.temperatures =
        this.points.stream().mapToInt(point -> point.value().temperatureMilliC()).toArray();
    this.rates = this.points.stream().mapToLong(point -> point.value().femtoPerMilli()).toArray();
    if (rates.length == 0) {
      throw new IllegalArgumentException("points were empty but a curve must have at least one");
    }
    for (int i = 1; i < temperatures.length; i++) {
      if (temperatures[i - 1] >= temperatures[i]) {
        throw new IllegalArgumentException(
            "points went from "
                + temperatures[i - 1]
                + " to "
                + temperatures[i]
                + " but they must run from cold to warm");
      }
    }
  }

  /** Returns the stated points, from cold to warm. */
  public List<Cited<RatePoint>> points() {
    return points;
  }

  /**
   * Returns the cure earned per millisecond at an air temperature, in 1e-15 of a whole cure,
   * rounded down; never negative.
   */
  public long femtoPerMilli(int temperatureMilliC) {
    int last = temperatures.length - 1;
    if (temperatureMilliC < temperatures[0] || temperatureMilliC > temperatures[last]) {
      return 0;
    }
    int i = 0;
    while (temperatures[i] < temperatureMilliC) {
      i++;
    }
    if (temperatures[i] == temperatureMilliC) {
      return rates[i];
    }
    long rise = rates[i] - rates[i - 1];
    long run = temperatures[i] - (long) temperatures[i - 1];
    long along = temperatureMilliC - (long) temperatures[i - 1];
    return rates[i - 1] + Math.floorDiv(Math.multiplyExact(rise, along), run);
  }

  /**
   * Returns the least rate anywhere from {@code lowMilliC} to {@code highMilliC}, both included.
   */
  public long minimumWithin(int lowMilliC, int highMilliC) {
    long least = Math.min(femtoPerMilli(lowMilliC), femtoPerMilli(highMilliC));
    for (int i = 0; i < rates.length; i++) {
      if (lowMilliC <= temperatures[i] && temperatures[i] <= highMilliC) {
        least = Math.min(least, rates[i]);
      }
    }
    return least;
  }

  /**
   * Returns the greatest rate anywhere from {@code lowMilliC} to {@code highMilliC}, both included.
   */
  public long maximumWithin(int lowMilliC, int highMilliC) {
    long most = Math.max(femtoPerMilli(lowMilliC), femtoPerMilli(highMilliC));
    for (int i = 0; i < rates.length; i++) {
      if (lowMilliC <= temperatures[i] && temperatures[i] <= highMilliC) {
        most = Math.max(most, rates[i]);
      }
    }
    return most;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RateCurve curve && points.equals(curve.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "RateCurve" + points;
  }
}
