package rindward.controller.season;

import java.time.Duration;
import rindward.controller.crop.Range;
import rindward.hardware.shed.RoomTruth;

/** What one room was like over a season, judged by the shed's truth. Not thread-safe. */
public final class RoomScore {
  private static final double MILLIS_AN_HOUR = 3_600_000;

  private double scoredHours;
  private double inRangeHours;
  private double tooColdHours;
  private double tooWarmHours;
  private double tooDryHours;
  private double tooDampHours;
  private double airChillingKh;
  private double fruitChillingKh;
  private double wetFruitHours;
  private double coldestC = Double.NaN;
  private double dampestPct = Double.NaN;
  private double degreeHours;

  /** Counts a stretch during which the room should have been in that range. */
  public void count(RoomTruth truth, Range range, Duration stretch) {
    double hours = stretch.toMillis() / MILLIS_AN_HOUR;
    double milliC = truth.airC() * 1000;
    double milliPct = truth.relativeHumidityPct() * 1000;
    boolean cold = milliC < range.temperature().low();
    boolean warm = milliC > range.temperature().high();
    boolean dry = milliPct < range.humidity().low();
    boolean damp = milliPct > range.humidity().high();
    scoredHours += hours;
    inRangeHours += cold || warm || dry || damp ? 0 : hours;
    tooColdHours += cold ? hours : 0;
    tooWarmHours += warm ? hours : 0;
    tooDryHours += dry ? hours : 0;
    tooDampHours += damp ? hours : 0;
    degreeHours += truth.airC() * hours;
    coldestC = Double.isNaN(coldestC) ? truth.airC() : Math.min(coldestC, truth.airC());
    dampestPct =
        Double.isNaN(dampestPct)
            ? truth.relativeHumidityPct()
            : Math.max(dampestPct, truth.relativeHumidityPct());
  }

  /**
   * Counts what harms the fruit that lies in the room, whatever the room should be.
   *
   * @param chillingC the temperature below which cold harms it; NaN if it does not mind
   */
  public void countHarm(RoomTruth truth, double chillingC, Duration stretch) {
    double hours = stretch.toMillis() / MILLIS_AN_HOUR;
    wetFruitHours += truth.wetFruit() ? hours : 0;
    if (!Double.isNaN(truth.coldestFruitC()) && !Double.isNaN(chillingC)) {
      airChillingKh += Math.max(0, chillingC - truth.airC()) * hours;
      fruitChillingKh += Math.max(0, chillingC - truth.coldestFruitC()) * hours;
    }
  }

  /** Returns the share of the scored time in which the room was in its range, 0..1; 0 if none. */
  public double inRangeShare() {
    return scoredHours == 0 ? 0 : inRangeHours / scoredHours;
  }

  public double scoredHours() {
    return scoredHours;
  }

  public double outOfRangeHours() {
    return scoredHours - inRangeHours;
  }

  public double tooColdHours() {
    return tooColdHours;
  }

  public double tooWarmHours() {
    return tooWarmHours;
  }

  public double tooDryHours() {
    return tooDryHours;
  }

  public double tooDampHours() {
    return tooDampHours;
  }

  /** Returns kelvin-hours of the air below the chilling temperature while fruit lay in it. */
  public double airChillingKh() {
    return airChillingKh;
  }

  /** Returns kelvin-hours of the coldest fruit below its chilling temperature. */
  public double fruitChillingKh() {
    return fruitChillingKh;
  }

  /** Returns hours in which water could be seen on some fruit. */
  public double wetFruitHours() {
    return wetFruitHours;
  }

  /** Returns the coldest the scored room has been; NaN if it was never scored. */
  public double coldestC() {
    return coldestC;
  }

  /** Returns the dampest the scored room has been, percent; NaN if it was never scored. */
  public double dampestPct() {
    return dampestPct;
  }

  /** Returns the mean temperature of the scored room; NaN if it was never scored. */
  public double meanC() {
    return scoredHours == 0 ? Double.NaN : degreeHours / scoredHours;
  }
}
