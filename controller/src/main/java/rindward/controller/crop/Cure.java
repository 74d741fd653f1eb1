package rindward.controller.crop;

import java.util.Optional;

/**
 * How a crop cures. The target is what the air should be; the rate is what the crop earns from the
 * air it gets, which may be less good.
 *
 * @param need whether a lot must go through it
 * @param temperature target in thousandths of a degree C
 * @param humidity target in thousandths of a percent relative humidity
 * @param days how long it usually takes at the target
 * @param rate progress by temperature
 * @param humidityEffect what dry and damp air do to it
 * @param movingAir whether progress needs a fan or wind
 * @param harmAbove air temperature in thousandths of a degree C above which the crop is harmed
 * @param weightLoss percent of weight lost by the end, in thousandths, where that shows the end
 * @param confirmation how a person sees that it is done
 */
public record Cure(
    Need need,
    Cited<Limits> temperature,
    Cited<Limits> humidity,
    Cited<Days> days,
    RateCurve rate,
    HumidityEffect humidityEffect,
    boolean movingAir,
    Cited<Integer> harmAbove,
    Optional<Cited<Limits>> weightLoss,
    Cited<String> confirmation) {

  /** Whether a lot must be cured. */
  public enum Need {
    /** It keeps badly without. */
    NEEDED,
    /** It may be cured shortly, and does well without. */
    OPTIONAL
  }

  /** Returns the target as a range of air. */
  public Range target() {
    return new Range(temperature.value(), humidity.value());
  }

  /**
   * Returns the cure earned per millisecond in this air, in 1e-15 of a whole cure, rounded down.
   *
   * @param temperatureMilliC air temperature in thousandths of a degree C
   * @param humidity relative humidity in thousandths of a percent
   */
  public long femtoPerMilli(int temperatureMilliC, int humidity) {
    return rate.femtoPerMilli(temperatureMilliC)
        * humidityEffect.factor(humidity)
        / HumiditySide.WHOLE;
  }

  /** Returns the least that air anywhere within both limits earns; see {@link #femtoPerMilli}. */
  public long minimumWithin(Limits temperatureMilliC, Limits humidity) {
    return rate.minimumWithin(temperatureMilliC.low(), temperatureMilliC.high())
        * humidityEffect.minimumWithin(humidity.low(), humidity.high())
        / HumiditySide.WHOLE;
  }

  /** Returns the most that air anywhere within both limits earns; see {@link #femtoPerMilli}. */
  public long maximumWithin(Limits temperatureMilliC, Limits humidity) {
    return rate.maximumWithin(temperatureMilliC.low(), temperatureMilliC.high())
        * humidityEffect.maximumWithin(humidity.low(), humidity.high())
        / HumiditySide.WHOLE;
  }
}
