package rindward.controller.crop;

import java.util.Optional;

/**
 * How a crop keeps. Temperatures are in thousandths of a degree C, humidity in thousandths of a
 * percent.
 *
 * @param temperature storage range
 * @param humidity storage range
 * @param life how many days it stays good at the reference temperature, counted from the end of
 *     curing, or from harvest where nothing is cured
 * @param reference air temperature for which {@code life} holds
 * @param aging how fast life is spent at other temperatures
 * @param chilling what cold above freezing does to it; empty where it does nothing
 * @param freezing highest temperature at which it freezes
 * @param upper air temperature above which it keeps badly
 * @param rotAbove relative humidity above which rot threatens
 * @param shrink expected loss of weight at the storage range, in thousandths of a percent per 30
 *     days
 */
public record Keeping(
    Cited<Limits> temperature,
    Cited<Limits> humidity,
    Cited<Days> life,
    Cited<Integer> reference,
    Aging aging,
    Optional<Chilling> chilling,
    Cited<Integer> freezing,
    Cited<Integer> upper,
    Cited<Integer> rotAbove,
    Cited<Limits> shrink) {

  /** Returns the storage range. */
  public Range range() {
    return new Range(temperature.value(), humidity.value());
  }

  /**
   * Returns how fast life is spent at an air temperature, in thousandths of the reference rate.
   * Below the chilling threshold it is what it is at the warm end of the storage range: cold that
   * injures saves nothing.
   */
  public int agingRate(int temperatureMilliC) {
    boolean injures =
        chilling.map(cold -> temperatureMilliC < cold.threshold().value()).orElse(false);
    return aging.rate(injures ? temperature.value().high() : temperatureMilliC);
  }
}
