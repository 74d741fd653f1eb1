package rindward.controller.ledger;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import rindward.controller.crop.Cure;
import rindward.controller.crop.HumiditySide;
import rindward.hardware.Thousandths;

/**
 * What the air of the place where a lot is has done for a cure like its own in the last day,
 * whether or not the lot was there yet: by this, and by nothing hoped for, it cures or does not.
 *
 * @param isProbed whether anything was ever measured there
 * @param measuredMillis how much of that day was measured
 * @param earned cure earned in it, in 1e-15 of a whole one
 * @param meanMilliC mean air temperature while it was measured, thousandths of a degree C
 * @param gatedMillis how much of it was warm enough, and too damp or too dry to cure anything
 */
public record CurePace(
    boolean isProbed, long measuredMillis, long earned, int meanMilliC, long gatedMillis) {
  /** A day, so that a warm afternoon and a cold night are one pace. */
  private static final long DAY_MILLIS = 86_400_000;

  private static final long MINUTE_MILLIS = 60_000;
  private static final int DRIEST = 0;
  private static final int DAMPEST = 100_000;

  /** Returns the pace up to an instant. */
  static CurePace of(Cure cure, History place, long toMillis, long holdMillis) {
    Counter counter = new Counter(cure);
    SampleHold.count(place, toMillis - DAY_MILLIS, toMillis, holdMillis, counter);
    return counter.pace(counter.measuredMillis > 0 || isProbed(place, toMillis));
  }

  private static boolean isProbed(History place, long toMillis) {
    AtomicBoolean isProbed = new AtomicBoolean();
    place.forEach(0, toMillis, run -> isProbed.set(true));
    return isProbed.get();
  }

  /** Tells whether anything was measured in the last day. */
  public boolean isKnown() {
    return measuredMillis > 0;
  }

  /** Returns in how many days at this pace so much is earned; empty if it earns nothing. */
  public Optional<Long> daysFor(long femto) {
    if (earned <= 0) {
      return Optional.empty();
    }
    // Rounded to a minute before it is rounded up: rates are rounded down.
    long minutes = Math.round((double) femto / earned * measuredMillis / MINUTE_MILLIS);
    return Optional.of(Math.floorDiv(minutes * MINUTE_MILLIS + DAY_MILLIS - 1, DAY_MILLIS));
  }

  /** Adds up. */
  private static final class Counter implements SampleHold.Counter {
    private final Cure cure;
    private final int withoutHumidity;
    private long measuredMillis;
    private long earned;
    private long warmthMillis;
    private long gatedMillis;

    Counter(Cure cure) {
      this.cure = cure;
      this.withoutHumidity = cure.humidityEffect().minimumWithin(DRIEST, DAMPEST);
    }

    @Override
    public void held(
        long fromMillis,
        long heldMillis,
        int[] temperatureMilliC,
        int[] humidityMilliPct,
        int offset,
        int count) {
      for (int i = offset; i < offset + count; i++) {
        int humidity = humidityMilliPct[i];
        int factor =
            humidity == Thousandths.NONE ? withoutHumidity : cure.humidityEffect().factor(humidity);
        long rate = cure.rate().femtoPerMilli(temperatureMilliC[i]);
        measuredMillis += heldMillis;
        earned += heldMillis * (rate * factor / HumiditySide.WHOLE);
        warmthMillis += heldMillis * temperatureMilliC[i];
        if (rate > 0 && factor == 0) {
          gatedMillis += heldMillis;
        }
      }
    }

    @Override
    public void unknown(long fromMillis, long millis) {
      // Nobody knows what that air did.
    }

    CurePace pace(boolean isProbed) {
      long mean = measuredMillis == 0 ? 0 : warmthMillis / measuredMillis;
      return new CurePace(isProbed, measuredMillis, earned, Math.toIntExact(mean), gatedMillis);
    }
  }
}
