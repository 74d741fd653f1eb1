package rindward.controller.room;

import org.jspecify.annotations.Nullable;
import rindward.hardware.Reading;
import rindward.hardware.Thousandths;

/**
 * The latest that is known from one probe of a room.
 *
 * @param probe its name
 * @param place where it hangs
 * @param reading its last good value; null if there has been none since the start
 * @param takenNanos when that was measured, on the monotonic clock
 * @param sameSinceNanos since when it has said exactly that
 * @param believedNanos how old it may be and still be used
 * @param failure why the newest attempt failed, in one sentence; null if it did not
 */
public record ProbeReading(
    String probe,
    ProbePlace place,
    @Nullable Reading reading,
    long takenNanos,
    long sameSinceNanos,
    long believedNanos,
    @Nullable String failure) {
  /** How old the value of a probe that answers when it is asked may be. */
  public static final long USUALLY_BELIEVED_NANOS = 20_000_000_000L;

  /** Air and humidity that are both the same to the last hundredth for so long are no air's. */
  private static final long FROZEN_NANOS = 3_600_000_000_000L;

  /**
   * No air moves a probe by so much from one tick to the next: a door opened on a night of -15 C
   * takes one of 60 s lag down by 4 K in 10 s.
   */
  private static final int LEAP_MILLI_C = 5_000;

  /** A value that has just changed, of a probe that answers when it is asked. */
  public ProbeReading(
      String probe,
      ProbePlace place,
      @Nullable Reading reading,
      long takenNanos,
      @Nullable String failure) {
    this(probe, place, reading, takenNanos, takenNanos, USUALLY_BELIEVED_NANOS, failure);
  }

  /** Returns what is known once the newest attempt has failed. */
  public ProbeReading failed(String why) {
    return new ProbeReading(probe, place, reading, takenNanos, sameSinceNanos, believedNanos, why);
  }

  /** Returns the same probe saying something else. */
  public ProbeReading withReading(Reading other) {
    return new ProbeReading(
        probe, place, other, takenNanos, sameSinceNanos, believedNanos, failure);
  }

  /** Returns the same by a monotonic clock that shows so much more. */
  public ProbeReading onClock(long shiftNanos) {
    return new ProbeReading(
        probe,
        place,
        reading,
        takenNanos + shiftNanos,
        sameSinceNanos + shiftNanos,
        believedNanos,
        failure);
  }

  /** Tells whether there is no value that may be used. */
  public boolean isSilent(long nowNanos) {
    return reading == null || nowNanos - takenNanos > believedNanos;
  }

  /**
   * Tells whether it repeats itself as no live sensor does. Only where there is a humidity too: a
   * coarse thermometer inside a fruit may well say the same for hours.
   */
  boolean isFrozen() {
    return reading != null && reading.hasHumidity() && takenNanos - sameSinceNanos > FROZEN_NANOS;
  }

  /** Tells whether a value is further from this one than air can have moved the probe. */
  public boolean isLeapTo(Reading next) {
    return reading != null
        && Math.abs(next.temperatureMilliC() - reading.temperatureMilliC()) > LEAP_MILLI_C;
  }

  /** Returns the temperature as a person reads it. */
  String temperature() {
    return reading == null ? "nothing" : Thousandths.toDouble(reading.temperatureMilliC()) + " C";
  }

  /** Returns the humidity as a person reads it. */
  String humidity() {
    return reading == null ? "nothing" : Thousandths.toDouble(reading.humidityMilliPct()) + " %";
  }
}
