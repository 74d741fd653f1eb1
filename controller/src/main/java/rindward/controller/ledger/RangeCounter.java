package rindward.controller.ledger;

import rindward.controller.crop.Range;

/**
 * Counts time inside and outside a range. Air mostly stays where it was, so samples are added up
 * for as long as they stay in one zone of temperature and one of humidity. Not thread-safe.
 */
public final class RangeCounter implements SampleHold.Counter {
  private final Zones temperature;
  private final Zones humidity;
  private final long[] millisByZones = new long[Zones.COUNT * Zones.COUNT];
  private long gapMillis;

  public RangeCounter(Range range, Accuracy accuracy) {
    this.temperature = new Zones(range.temperature(), accuracy.temperatureMilliC());
    this.humidity = new Zones(range.humidity(), accuracy.humidityMilliPct());
  }

  /** Returns the account of a stretch of one history. */
  public static Account account(
      History history,
      Range range,
      Accuracy accuracy,
      long fromMillis,
      long toMillis,
      long holdMillis) {
    RangeCounter counter = new RangeCounter(range, accuracy);
    SampleHold.count(history, fromMillis, toMillis, holdMillis, counter);
    return counter.account();
  }

  @Override
  public void held(
      long fromMillis,
      long heldMillis,
      int[] temperatureMilliC,
      int[] humidityMilliPct,
      int offset,
      int count) {
    int end = offset + count;
    int i = offset;
    while (i < end) {
      int warmth = temperature.of(temperatureMilliC[i]);
      int damp = humidity.of(humidityMilliPct[i]);
      // "low <= v && v <= high" as one comparison: v - low, taken as unsigned, is at most
      // high - low. This is where a season's account spends its time.
      int coldest = temperature.low(warmth);
      int driest = humidity.low(damp);
      int warmthSpan = temperature.high(warmth) - coldest + Integer.MIN_VALUE;
      int dampSpan = humidity.high(damp) - driest + Integer.MIN_VALUE;
      int start = i;
      do {
        i++;
      } while (i < end
          && temperatureMilliC[i] - coldest + Integer.MIN_VALUE <= warmthSpan
          && humidityMilliPct[i] - driest + Integer.MIN_VALUE <= dampSpan);
      millisByZones[warmth * Zones.COUNT + damp] += heldMillis * (i - start);
    }
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    gapMillis += millis;
  }

  /** Returns what has been counted so far. */
  public Account account() {
    Totals totals = new Totals();
    totals.elapsed = gapMillis;
    totals.unknown = gapMillis;
    for (int warmth = 0; warmth < Zones.COUNT; warmth++) {
      for (int damp = 0; damp < Zones.COUNT; damp++) {
        totals.add(warmth, damp, millisByZones[warmth * Zones.COUNT + damp]);
      }
    }
    return totals.account();
  }

  /** The zones' times drawn together. */
  private final class Totals {
    private long elapsed;
    private long unknown;
    private final long[] inRange = new long[3];
    private final long[] tooCold = new long[3];
    private final long[] tooWarm = new long[3];
    private final long[] tooDry = new long[3];
    private final long[] tooDamp = new long[3];

    void add(int warmth, int damp, long millis) {
      if (millis == 0) {
        return;
      }
      elapsed += millis;
      boolean warmthKnown = Zones.isMeasured(warmth);
      boolean dampKnown = Zones.isMeasured(damp);
      if (warmthKnown) {
        add(tooCold, temperature.below(warmth), millis);
        add(tooWarm, temperature.above(warmth), millis);
      }
      if (dampKnown) {
        add(tooDry, humidity.below(damp), millis);
        add(tooDamp, humidity.above(damp), millis);
      }
      if (warmthKnown && dampKnown) {
        add(inRange, Math.min(temperature.inside(warmth), humidity.inside(damp)), millis);
      } else if (!(warmthKnown && temperature.inside(warmth) < MEASURED)
          && !(dampKnown && humidity.inside(damp) < MEASURED)) {
        // Half a reading proves "out of range" but never "in range".
        unknown += millis;
      }
    }

    /** A level of 3 counts for all three readings, 2 for measured and possible, 1 for possible. */
    private void add(long[] readings, int level, long millis) {
      for (int reading = readings.length - level; reading < readings.length; reading++) {
        readings[reading] += millis;
      }
    }

    Account account() {
      return new Account(
          elapsed,
          unknown,
          tally(inRange),
          tally(tooCold),
          tally(tooWarm),
          tally(tooDry),
          tally(tooDamp));
    }

    private BoundedTotal tally(long[] readings) {
      return new BoundedTotal(readings[0], readings[1], readings[2]);
    }
  }

  private static final int MEASURED = 2;
}
