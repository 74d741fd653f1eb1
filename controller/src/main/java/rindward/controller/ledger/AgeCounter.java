package rindward.controller.ledger;

import java.util.Arrays;
import rindward.controller.crop.Aging;
import rindward.controller.crop.Keeping;
import rindward.hardware.Thousandths;

/**
 * Adds up how much of a lot's life has been spent: time, weighted by how fast the type ages in the
 * air it had. Time that was not measured counts as if it had been stored well, and is told apart.
 * Not thread-safe.
 */
public final class AgeCounter implements SampleHold.Counter {
  /** Temperatures whose rate is remembered: a power is dear, and they come again and again. */
  private static final int REMEMBERED = 1024;

  private final Keeping keeping;
  private int[] temperatures = {};
  private int[] rates = {};
  private long spentMicros;
  private long unknownMillis;

  public AgeCounter(Keeping keeping) {
    this.keeping = keeping;
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
      int t = temperatureMilliC[i];
      if (t == Thousandths.NONE) {
        unknown(fromMillis, heldMillis);
      } else {
        spentMicros += heldMillis * rate(t);
      }
    }
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    spentMicros += millis * Aging.REFERENCE;
    unknownMillis += millis;
  }

  /** Returns the life spent, in milliseconds at the reference temperature. */
  public long spentMillis() {
    return spentMicros / Aging.REFERENCE;
  }

  /** Returns how much of the time was not measured. */
  public long unknownMillis() {
    return unknownMillis;
  }

  private int rate(int t) {
    if (temperatures.length == 0) {
      temperatures = new int[REMEMBERED];
      rates = new int[REMEMBERED];
      Arrays.fill(temperatures, Thousandths.NONE);
    }
    int slot = Math.floorMod(t / 10, REMEMBERED);
    if (temperatures[slot] != t) {
      temperatures[slot] = t;
      rates[slot] = keeping.agingRate(t);
    }
    return rates[slot];
  }
}
