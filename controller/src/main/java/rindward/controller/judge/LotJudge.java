package rindward.controller.judge;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.ledger.History;

/**
 * Remembers what was judged last, for a process that is asked again and again. What the air has
 * done is added up at each full hour, for everybody alike; what people say counts at once. All that
 * is remembered may be forgotten at any moment: the next answers are the same, and slower. For any
 * thread.
 */
public final class LotJudge {
  private final CropGuide crops;
  private final long holdMillis;
  private final Function<String, History> historyOf;
  private @Nullable JudgedLots last;
  private @Nullable Instant awaited;

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   */
  public LotJudge(CropGuide crops, long holdMillis, Function<String, History> historyOf) {
    this.crops = crops;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
  }

  /** Returns what is so by all that was told, and by the air up to the last full hour. */
  public synchronized JudgedLots judge(Told told, Instant now) {
    return judge(told, hour(now), last);
  }

  /**
   * Returns the same for somebody who will not wait for the air of a new hour: until that has been
   * added up by {@code later}, what is so by the hour before.
   */
  public synchronized JudgedLots lately(Told told, Instant now, Executor later) {
    Instant hour = hour(now);
    JudgedLots known = last;
    if (known == null || !known.hour().isBefore(hour)) {
      return judge(told, hour, known);
    }
    if (!hour.equals(awaited)) {
      awaited = hour;
      later.execute(() -> turn(told, hour));
    }
    return judge(told, known.hour(), known);
  }

  /** Forgets everything remembered. */
  public synchronized void forget() {
    last = null;
    awaited = null;
  }

  /** Adds up the air of a new hour before anybody is answered by it. */
  private void turn(Told told, Instant hour) {
    JudgedLots before;
    synchronized (this) {
      before = last;
    }
    JudgedLots next = new JudgedLots(crops, holdMillis, historyOf, told, hour, before);
    try {
      next.prepare();
      synchronized (this) {
        JudgedLots meanwhile = last;
        last =
            meanwhile == null || meanwhile.told() == told
                ? next
                : new JudgedLots(crops, holdMillis, historyOf, meanwhile.told(), hour, next);
      }
    } finally {
      synchronized (this) {
        awaited = null;
      }
    }
  }

  private JudgedLots judge(Told told, Instant hour, @Nullable JudgedLots known) {
    if (known != null && known.told() == told && known.hour().equals(hour)) {
      return known;
    }
    JudgedLots next = new JudgedLots(crops, holdMillis, historyOf, told, hour, known);
    last = next;
    return next;
  }

  private static Instant hour(Instant now) {
    return now.truncatedTo(ChronoUnit.HOURS);
  }
}
