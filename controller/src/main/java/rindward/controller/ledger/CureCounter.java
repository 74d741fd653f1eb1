package rindward.controller.ledger;

import java.util.List;
import java.util.OptionalLong;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Cure;
import rindward.controller.crop.HumidityEffect;
import rindward.controller.crop.HumiditySide;
import rindward.controller.crop.RateCurve;
import rindward.controller.crop.RatePoint;
import rindward.hardware.Thousandths;

/**
 * Integrates the rate of curing over the air that was measured, until the measured progress is a
 * whole cure. Progress is in 1e-15 of a cure ({@link RateCurve#WHOLE} is a whole one), so cutting
 * time up differently changes nothing. Not thread-safe.
 */
public final class CureCounter implements SampleHold.Counter {
  private static final int DRIEST = 0;
  private static final int DAMPEST = 100_000;

  private final RateCurve rate;
  private final HumidityEffect effect;
  private final Accuracy accuracy;

  /** The curve begins and ends here: air certainly beyond earns nothing and needs no sums. */
  private final int coldestMilliC;

  private final int warmestMilliC;
  private long certain;
  private long measured;
  private long possible;
  private OptionalLong doneAtMillis = OptionalLong.empty();

  /**
   * @param before progress already earned elsewhere, to go on from
   */
  public CureCounter(Cure cure, Accuracy accuracy, BoundedTotal before) {
    this.rate = cure.rate();
    this.effect = cure.humidityEffect();
    this.accuracy = accuracy;
    List<Cited<RatePoint>> points = rate.points();
    this.coldestMilliC = points.get(0).value().temperatureMilliC() - accuracy.temperatureMilliC();
    this.warmestMilliC =
        points.get(points.size() - 1).value().temperatureMilliC() + accuracy.temperatureMilliC();
    this.certain = before.certain();
    this.measured = before.measured();
    this.possible = before.possible();
  }

  @Override
  public void held(
      long fromMillis,
      long heldMillis,
      int[] temperatureMilliC,
      int[] humidityMilliPct,
      int offset,
      int count) {
    for (int i = offset; i < offset + count && doneAtMillis.isEmpty(); i++) {
      int t = temperatureMilliC[i];
      if (coldestMilliC <= t && t <= warmestMilliC) {
        earn(fromMillis + heldMillis * (i - offset), heldMillis, t, humidityMilliPct[i]);
      }
    }
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    // Time that was not measured cures nothing, as far as anybody can tell.
  }

  /** Returns the progress so far, certain, measured and possible. */
  public BoundedTotal progress() {
    return new BoundedTotal(certain, measured, possible);
  }

  /** Returns when the measured progress reached a whole cure, if it did in what was counted. */
  public OptionalLong doneAtMillis() {
    return doneAtMillis;
  }

  private void earn(long fromMillis, long heldMillis, int t, int humidityMilliPct) {
    int a = accuracy.temperatureMilliC();
    int b = accuracy.humidityMilliPct();
    boolean knowsDamp = humidityMilliPct != Thousandths.NONE;
    // Without a humidity, only what the worst humidity would have earned.
    int low = knowsDamp ? humidityMilliPct : DRIEST;
    int high = knowsDamp ? humidityMilliPct : DAMPEST;
    int leastFactor = effect.minimumWithin(low - b, high + b);
    int mostFactor = knowsDamp ? effect.maximumWithin(low - b, high + b) : leastFactor;
    long femtoPerMilli = earned(rate.femtoPerMilli(t), effect.minimumWithin(low, high));

    long millis = heldMillis;
    long missing = RateCurve.WHOLE - measured;
    if (millis * femtoPerMilli >= missing) {
      millis = Math.floorDiv(missing + femtoPerMilli - 1, femtoPerMilli);
      doneAtMillis = OptionalLong.of(fromMillis + millis);
    }
    certain += millis * earned(rate.minimumWithin(t - a, t + a), leastFactor);
    measured += millis * femtoPerMilli;
    possible += millis * earned(rate.maximumWithin(t - a, t + a), mostFactor);
  }

  private static long earned(long femtoPerMilli, int factor) {
    return femtoPerMilli * factor / HumiditySide.WHOLE;
  }
}
