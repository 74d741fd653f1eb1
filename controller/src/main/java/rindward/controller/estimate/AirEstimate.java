package rindward.controller.estimate;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.ControlInput;
import rindward.controller.room.Picture;
import rindward.controller.room.Stock;
import rindward.hardware.air.SaturationPressure;

/**
 * How a room's air has moved of late, and what the fruit in it will have made of that. Estimates
 * are doubles here and are rounded once, in {@link ControlInput}, before any rule compares them.
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

  private static final double STEEPEST_C_PER_S = 2;
  private static final double MOST_VAPOUR_PA = 50_000;

  /** A gap this long makes every estimate but that of the fruit start anew. */
  private static final double LONGEST_GAP_SECONDS = 600;

  /** Starts from the first good picture; null while there is none. */
  public static @Nullable AirEstimate next(
      @Nullable AirEstimate before,
      Picture picture,
      Stock stock,
      OutdoorEstimate outdoor,
      Instant at,
      long nanos) {
    if (!picture.hasTemperature()) {
      return before;
    }
    double measuredC = picture.temperatureMilliC() / 1000.0;
    double seconds = before == null ? Double.MAX_VALUE : (nanos - before.nanos) / 1e9;
    if (before == null || seconds > LONGEST_GAP_SECONDS) {
      return first(picture, measuredC, stock, outdoor, before, at, nanos);
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
        fruit(before, picture, measuredC, stock, outdoor, at, nanos),
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
      Instant at,
      long nanos) {
    double fruitC =
        before != null
            ? fruit(before, picture, measuredC, stock, outdoor, at, nanos)
            : picture.hasFruit()
                ? picture.fruitMilliC() / 1000.0
                : Math.min(measuredC, carriedInC(measuredC, stock, outdoor, at));
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
      Instant at,
      long nanos) {
    if (picture.hasFruit()) {
      return picture.fruitMilliC() / 1000.0;
    }
    double seconds = (nanos - before.nanos) / 1e9;
    double fruitC = before.fruitC + share(seconds, FRUIT_SECONDS) * (measuredC - before.fruitC);
    boolean arrived = !Objects.equals(stock.newest(), before.newest);
    return arrived ? Math.min(fruitC, carriedInC(measuredC, stock, outdoor, at)) : fruitC;
  }

  /**
   * Returns what the newest stock has become since it was carried in as cold as it was outdoors:
   * what came yesterday has the warmth of the room, however cold it is outdoors now.
   */
  private static double carriedInC(
      double measuredC, Stock stock, OutdoorEstimate outdoor, Instant at) {
    Instant came = stock.newest();
    if (came == null || !outdoor.isKnown()) {
      return measuredC;
    }
    double cameC = Math.min(outdoor.nowC(), outdoor.meanC()) - ARRIVES_COLDER_K;
    double seconds = Math.max(0, Duration.between(came, at).toSeconds());
    return cameC + share(seconds, FRUIT_SECONDS) * (measuredC - cameC);
  }

  /** Returns the same by a monotonic clock that shows so much more. */
  AirEstimate onClock(long shiftNanos) {
    return new AirEstimate(
        nanos + shiftNanos,
        followerC,
        airC,
        slopeCPerS,
        slowC,
        fruitC,
        lowC,
        highC,
        vapourPa,
        newest);
  }

  /** Tells whether every figure is one that a room can have. */
  boolean hasPossibleFigures() {
    return isPossibleC(followerC)
        && isPossibleC(airC)
        && isPossibleC(slowC)
        && isPossibleC(fruitC)
        && isPossibleC(lowC)
        && isPossibleC(highC)
        && Math.abs(slopeCPerS) <= STEEPEST_C_PER_S
        && (Double.isNaN(vapourPa) || 0 <= vapourPa && vapourPa <= MOST_VAPOUR_PA);
  }

  /** What a shed's air or fruit can have, frost and a burning heater included. */
  static boolean isPossibleC(double temperatureC) {
    return -50 <= temperatureC && temperatureC <= 80;
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
