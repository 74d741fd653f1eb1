package rindward.controller.desk;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How much of each slot of time an output was on. It counts as on from when it was switched on
 * until it was switched off or the record breaks off, whichever is first: of a controller that was
 * not running nothing is claimed.
 */
final class OnShare {
  private final long fromMillis;
  private final long toMillis;
  private final RecordGaps gaps;
  private final long[] onMillis;
  private long onSince = Long.MIN_VALUE;

  OnShare(long fromMillis, long toMillis, int slots, RecordGaps gaps) {
    this.fromMillis = fromMillis;
    this.toMillis = toMillis;
    this.gaps = gaps;
    this.onMillis = new long[slots];
  }

  /** Takes the next switching; one that changes nothing does no harm. */
  void switched(long atMillis, boolean on) {
    settle(atMillis);
    onSince = on ? atMillis : Long.MIN_VALUE;
  }

  /**
   * Returns the share of each slot, 0 to 1 in hundredths; null for a slot of which nothing is
   * known.
   */
  List<@Nullable Double> shares() {
    settle(toMillis);
    onSince = Long.MIN_VALUE;
    List<@Nullable Double> shares = new ArrayList<>(onMillis.length);
    for (int slot = 0; slot < onMillis.length; slot++) {
      long known =
          slotStart(slot + 1) - slotStart(slot) - gaps.within(slotStart(slot), slotStart(slot + 1));
      shares.add(known <= 0 ? null : Math.round(100.0 * onMillis[slot] / known) / 100.0);
    }
    return shares;
  }

  private void settle(long untilMillis) {
    if (onSince == Long.MIN_VALUE) {
      return;
    }
    long from = Math.max(onSince, fromMillis);
    long until = Math.min(Math.min(untilMillis, toMillis), gaps.firstAfter(onSince));
    int slot = from >= until ? onMillis.length : slotOf(from);
    while (slot < onMillis.length && slotStart(slot) < until) {
      onMillis[slot] += Math.min(until, slotStart(slot + 1)) - Math.max(from, slotStart(slot));
      slot++;
    }
  }

  private int slotOf(long millis) {
    int slot = (int) ((millis - fromMillis) * onMillis.length / (toMillis - fromMillis));
    while (slotStart(slot + 1) <= millis) {
      slot++;
    }
    return slot;
  }

  private long slotStart(int slot) {
    return fromMillis + (toMillis - fromMillis) * slot / onMillis.length;
  }
}
