package rindward.controller.ledger;

/**
 * From samples to time. A sample holds until the next one, but at most for the hold limit; the rest
 * of the gap is unknown. This is the only place where that rule stands; counters add up what it
 * hands them.
 */
public final class SampleHold {

  /** Adds up held samples. Every call is about time directly after that of the call before. */
  public interface Counter {
    /**
     * Takes {@code count} samples from {@code offset} on, each of which holds for {@code
     * heldMillis}, the first from {@code fromMillis} on.
     */
    void held(
        long fromMillis,
        long heldMillis,
        int[] temperatureMilliC,
        int[] humidityMilliPct,
        int offset,
        int count);

    /** Takes time in which no sample held. */
    void unknown(long fromMillis, long millis);
  }

  private final long toMillis;
  private final long holdMillis;
  private final Counter counter;

  /** Everything before this instant has been handed over. */
  private long doneMillis;

  private Run pendingRun = Run.of(Long.MIN_VALUE / 2, 0, 0);

  private SampleHold(long fromMillis, long toMillis, long holdMillis, Counter counter) {
    this.doneMillis = fromMillis;
    this.toMillis = toMillis;
    this.holdMillis = holdMillis;
    this.counter = counter;
  }

  /**
   * Hands the time from {@code fromMillis} up to {@code toMillis} to {@code counter}, every
   * millisecond once and in order. A sample taken before {@code fromMillis} holds into the stretch.
   *
   * @param holdMillis how long a sample holds at most, above zero
   */
  public static void count(
      History history, long fromMillis, long toMillis, long holdMillis, Counter counter) {
    if (holdMillis <= 0) {
      throw new IllegalArgumentException(
          "hold limit was " + holdMillis + " ms but it must be above zero");
    }
    if (toMillis <= fromMillis) {
      return;
    }
    SampleHold walk = new SampleHold(fromMillis, toMillis, holdMillis, counter);
    history.forEach(fromMillis - holdMillis, toMillis, walk::accept);
    walk.finishPending(toMillis);
    walk.skipTo(toMillis);
  }

  private void accept(Run run) {
    finishPending(run.startMillis());
    long held = Math.min(run.stepMillis(), holdMillis);
    int last = run.count() - 1;
    int next = firstReaching(run, doneMillis, held);
    while (next < last && doneMillis < toMillis) {
      int whole = held < run.stepMillis() ? 0 : wholeSamples(run, next, last);
      if (whole > 0) {
        hand(run, next, whole, held);
        next += whole;
      } else {
        handOver(run, next, at(run, next) + held);
        next++;
      }
    }
    pendingRun = run;
  }

  /** Returns the first sample of the run, the last excepted, that holds beyond {@code millis}. */
  private static int firstReaching(Run run, long millis, long held) {
    long index = Math.floorDiv(millis - held - run.startMillis(), run.stepMillis()) + 1;
    return (int) Math.max(0, Math.min(run.count() - 1, index));
  }

  /** Returns how many samples from {@code next} on, the last excepted, need no clipping at all. */
  private int wholeSamples(Run run, int next, int last) {
    if (at(run, next) != doneMillis) {
      return 0;
    }
    return (int) Math.min(last - next, (toMillis - doneMillis) / run.stepMillis());
  }

  /** The last sample of the run before holds until {@code nextMillis} or to its limit. */
  private void finishPending(long nextMillis) {
    int last = pendingRun.count() - 1;
    handOver(pendingRun, last, Math.min(pendingRun.lastMillis() + holdMillis, nextMillis));
  }

  /** Hands over one sample up to {@code untilMillis}, clipped to what is still to be counted. */
  private void handOver(Run run, int index, long untilMillis) {
    long until = Math.min(untilMillis, toMillis);
    if (until <= doneMillis) {
      return;
    }
    skipTo(Math.min(at(run, index), toMillis));
    if (until > doneMillis) {
      hand(run, index, 1, until - doneMillis);
    }
  }

  private void hand(Run run, int index, int count, long heldMillis) {
    counter.held(
        doneMillis, heldMillis, run.temperatureMilliC(), run.humidityMilliPct(), index, count);
    doneMillis += heldMillis * count;
  }

  private void skipTo(long millis) {
    if (millis > doneMillis) {
      counter.unknown(doneMillis, millis - doneMillis);
      doneMillis = millis;
    }
  }

  private static long at(Run run, int index) {
    return run.startMillis() + (long) run.stepMillis() * index;
  }
}
