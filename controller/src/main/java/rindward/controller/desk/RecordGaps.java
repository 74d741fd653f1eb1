package rindward.controller.desk;

import java.util.Arrays;
import rindward.controller.ledger.History;
import rindward.controller.ledger.SampleHold;

/**
 * The times in which a room was not watched, because nothing was noted for longer than it holds.
 */
final class RecordGaps implements SampleHold.Counter {
  private long[] starts = new long[16];
  private long[] ends = new long[16];
  private int count;

  private RecordGaps() {}

  static RecordGaps of(History history, long fromMillis, long toMillis, long holdMillis) {
    RecordGaps gaps = new RecordGaps();
    SampleHold.count(history, fromMillis, toMillis, holdMillis, gaps);
    return gaps;
  }

  /** Returns where the first gap begins that ends after {@code millis}; never, if there is none. */
  long firstAfter(long millis) {
    int gap = indexEndingAfter(millis);
    return gap == count ? Long.MAX_VALUE : starts[gap];
  }

  /** Returns how much of a stretch lies in gaps. */
  long within(long fromMillis, long toMillis) {
    long sum = 0;
    for (int gap = indexEndingAfter(fromMillis); gap < count && starts[gap] < toMillis; gap++) {
      sum += Math.min(ends[gap], toMillis) - Math.max(starts[gap], fromMillis);
    }
    return sum;
  }

  @Override
  public void held(
      long fromMillis,
      long heldMillis,
      int[] temperatureMilliC,
      int[] humidityMilliPct,
      int offset,
      int samples) {
    // Watched, whatever the probes said.
  }

  @Override
  public void unknown(long fromMillis, long millis) {
    if (count > 0 && ends[count - 1] == fromMillis) {
      ends[count - 1] = fromMillis + millis;
      return;
    }
    if (count == starts.length) {
      starts = Arrays.copyOf(starts, 2 * count);
      ends = Arrays.copyOf(ends, 2 * count);
    }
    starts[count] = fromMillis;
    ends[count] = fromMillis + millis;
    count++;
  }

  private int indexEndingAfter(long millis) {
    int found = Arrays.binarySearch(ends, 0, count, millis);
    return found >= 0 ? found + 1 : -found - 1;
  }
}
