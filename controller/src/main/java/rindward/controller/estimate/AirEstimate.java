package rindward.controller.estimate;

import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.Situation;
import rindward.controller.room.Picture;
import rindward.controller.room.Stock;
import rindward.hardware.air.SaturationPressure;

/**
 * How a room's air has moved of late, and what the fruit in it will have made of that. Estimates
 * are doubles here and are rounded once, in {@link Situation}, before any rule compares them.
 *
 * @param nanos when it was last looked at, monotonic
 * @param followerC what the probe said, some seconds late; the difference tells the slope
 * @param airC the air as it is now: what the probe says, plus what its own lag hides
 * @param slopeCPerS how fast it changes
 * @param slowC the air over the last hour: what walls, crates and floor are like
 * @param fruitC the coldest fruit
 * @param lowC the lowest the air has been in the last minutes
 * @param highC the highest
 * @param vapourPa vapour pressure of the air; NaN while no humidity is known
 * @param newest when the newest stock that was counted in came
 */
public record AirEstimate(
    long nanos,
    double followerC,
    double airC,
    double slopeCPerS,
    double slowC,
    double fruitC,
    double lowC,
    double highC,
    double vapourPa,
    @Nullable Instant newest) {

  /**
   * How late a probe is in slowly moving air (common practice: about a minute for a sensor behind a
   * filter cap; data sheets state a few seconds in a wind).
   */
  static final double PROBE_LAG_SECONDS = 60;

  private static final double FOLLOWER_SECONDS = 20;
  private static final double SLOW_SECONDS = 3600;
  private static final double VAPOUR_SECONDS = 60;

  /**
   * How fast fruit in crates follows the air: 3.9 kJ/(kg K), a published specific heat of winter
   * squash (Chen's equation for its water content), over 0.14 W/(K kg) to the air (judgement).
   */
  private static final double FRUIT_SECONDS = 3900 / 0.14;

  /** New fruit is taken to be this much colder than it has been outdoors (judgement). */
  private static final double ARRIVES_COLDER_K = 2;

  /** How fast the memory of a swing fades: a kelvin in a quarter of an hour. */
  private static final double FADE_K_PER_S = 1.0 / 900;

  /** A gap this long makes every estimate start anew. */
  private static final double LONGEST_GAP_SECONDS = 600;

  /** Starts from the first good picture; null while there is none. */
  public static @Nullable AirEstimate next(
      @Nullable AirEstimate before,
      Picture picture,
      Stock stock,
      OutdoorEstimate outdoor,
      long nanos) {
    if (!picture.hasTemperature()) {
      return before;
    }
    double measuredC = picture.temperatureMilliC() / 1000.0;
    double seconds = before == null ? Double.MAX_VALUE : (nanos - before.nanos) / 1e9;
    if (before == null || seconds > LONGEST_GAP_SECONDS) {
      return first(picture, measuredC, stock, outdoor, before, nanos);
    }
    if (seconds <= 0) {
      return before;
    }
    double follow = share(seconds, FOLLOWER_SECONDS);
    double slope = follow / seconds * (measuredC - before.followerC);
    double airC = measuredC + PROBE_LAG_SECONDS * slope;
    double fade = FADE_K_PER_S * seconds;
    return new AirEstimate(
        nanos,
        before.followerC + follow * (measuredC - before.followerC),
        airC,
        slope,
        before.slowC + share(seconds, SLOW_SECONDS) * (measuredC - before.slowC),
        fruit(before, picture, measuredC, stock, outdoor, seconds),
        Math.min(airC, before.lowC + fade),
        Math.max(airC, before.highC - fade),
        vapour(before, picture, measuredC, seconds),
        stock.newest());
  }

  private static AirEstimate first(
      Picture picture,
      double measuredC,
      Stock stock,
      OutdoorEstimate outdoor,
      @Nullable AirEstimate before,
      long nanos) {
    double fruitC = measuredC;
    if (picture.hasFruit()) {
      fruitC = picture.fruitMilliC() / 1000.0;
    } else if (before != null) {
      fruitC = Math.min(measuredC, before.fruitC);
    } else if (stock.newest() != null && outdoor.isKnown()) {
      fruitC = Math.min(measuredC, arrivalC(outdoor));
    }
    return new AirEstimate(
        nanos,
        measuredC,
        measuredC,
        0,
        measuredC,
        fruitC,
        measuredC,
        measuredC,
        vapourPa(picture, measuredC),
        stock.newest());
  }

  private static double fruit(
      AirEstimate before,
      Picture picture,
      double measuredC,
      Stock stock,
      OutdoorEstimate outdoor,
      double seconds) {
    if (picture.hasFruit()) {
      return picture.fruitMilliC() / 1000.0;
    }
    double fruitC = before.fruitC + share(seconds, FRUIT_SECONDS) * (measuredC - before.fruitC);
    boolean arrived = stock.newest() != null && !Objects.equals(stock.newest(), before.newest);
    return arrived && outdoor.isKnown() ? Math.min(fruitC, arrivalC(outdoor)) : fruitC;
  }

  private static double arrivalC(OutdoorEstimate outdoor) {
    return Math.min(outdoor.nowC(), outdoor.meanC()) - ARRIVES_COLDER_K;
  }

  private static double vapour(
      AirEstimate before, Picture picture, double measuredC, double seconds) {
    double pa = vapourPa(picture, measuredC);
    if (Double.isNaN(pa) || Double.isNaN(before.vapourPa)) {
      return pa;
    }
    return before.vapourPa + share(seconds, VAPOUR_SECONDS) * (pa - before.vapourPa);
  }

  static double vapourPa(Picture picture, double measuredC) {
    return picture.hasHumidity()
        ? picture.humidityMilliPct() / 100_000.0 * SaturationPressure.overIceOrWaterPa(measuredC)
        : Double.NaN;
  }

  /** Returns which share of a step a filter of that time constant takes in that time. */
  static double share(double seconds, double timeConstantSeconds) {
    return 1 - Math.exp(-seconds / timeConstantSeconds);
  }
}
