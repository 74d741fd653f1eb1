package rindward.controller.judge;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.History;
import rindward.controller.variety.LotLesson;
import rindward.controller.variety.VarietyName;

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
  private final Function<VarietyName, Map<String, LotLesson>> taught;
  private final Supplier<List<Recorded>> journal;

  /** Held by whoever adds up a new hour; others go on with the last one meanwhile. */
  private final Object turning = new Object();

  private @Nullable JournalView told;
  private @Nullable JudgedLots last;
  private @Nullable Instant awaited;

  /**
   * @param holdMillis how long a sample holds at most
   * @param historyOf what was measured in a place; empty for a place without probes
   * @param journal everything said so far
   */
  public LotJudge(
      CropGuide crops,
      long holdMillis,
      Function<String, History> historyOf,
      Supplier<List<Recorded>> journal) {
    this(crops, holdMillis, historyOf, journal, name -> Map.of());
  }

  /**
   * The same for somebody who does not hold what is over.
   *
   * @param journal everything said of what is not over
   * @param taught by the lots of a variety that are over, by their codes
   */
  public LotJudge(
      CropGuide crops,
      long holdMillis,
      Function<String, History> historyOf,
      Supplier<List<Recorded>> journal,
      Function<VarietyName, Map<String, LotLesson>> taught) {
    this.crops = crops;
    this.holdMillis = holdMillis;
    this.historyOf = historyOf;
    this.taught = taught;
    this.journal = journal;
  }

  /** Returns everything said so far; told again only when something was said. */
  public synchronized JournalView told() {
    JournalView now = JournalView.after(told, journal.get());
    told = now;
    return now;
  }

  /**
   * Returns what is so by all that was said, and by the air up to the last full hour; at its
   * beginning that takes a while.
   */
  public JudgedLots judge(Instant now) {
    Instant hour = hour(now);
    synchronized (turning) {
      JudgedLots known = last();
      if (known == null || !known.hour().equals(hour)) {
        JudgedLots next = judged(told(), hour, known);
        next.prepare();
        known = next;
        synchronized (this) {
          last = next;
        }
      }
      return retold(known);
    }
  }

  /**
   * Returns the same for somebody who will not wait for the air of a new hour: until {@code later}
   * has added it up, what is so by the air of the hour that was added up last.
   */
  public JudgedLots lately(Instant now, Executor later) {
    JudgedLots known = last();
    Instant hour = hour(now);
    if (known == null || known.hour().isAfter(hour)) {
      return judge(now);
    }
    if (known.hour().isBefore(hour) && isFirstToAwait(hour)) {
      later.execute(
          () -> {
            try {
              var unused = judge(now);
            } finally {
              await(null);
            }
          });
    }
    return retold(known);
  }

  /** Forgets everything remembered. */
  public synchronized void forget() {
    told = null;
    last = null;
    awaited = null;
  }

  private synchronized @Nullable JudgedLots last() {
    return last;
  }

  private synchronized boolean isFirstToAwait(Instant hour) {
    boolean isFirst = !hour.equals(awaited);
    awaited = hour;
    return isFirst;
  }

  private synchronized void await(@Nullable Instant hour) {
    awaited = hour;
  }

  /** Returns what was judged, with what was said since. */
  private synchronized JudgedLots retold(JudgedLots known) {
    JournalView now = told();
    JudgedLots newest = last == null || last.hour().isBefore(known.hour()) ? known : last;
    if (newest.told() != now) {
      newest = judged(now, newest.hour(), newest);
      last = newest;
    }
    return newest;
  }

  private JudgedLots judged(JournalView now, Instant hour, @Nullable JudgedLots known) {
    return new JudgedLots(crops, holdMillis, historyOf, taught, now, hour, known);
  }

  private static Instant hour(Instant now) {
    return now.truncatedTo(ChronoUnit.HOURS);
  }
}
