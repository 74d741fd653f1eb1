package rindward.controller.store.samples;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Run;

/**
 * Finished days as they were decoded, for the lots of a room share its days. A day is kept once it
 * was asked for twice, until {@link #CAPACITY} samples are kept; then no more come in, for a season
 * read from end to end would push out each day just before it is needed. May be thrown away at any
 * moment.
 */
final class KeptDays {
  /** About a season of one room and a cure in another: 16 MB. */
  private static final int CAPACITY = 2_000_000;

  /** Smaller chunks are pieces of an unfinished day. */
  private static final int LEAST = 500;

  private final Map<Chunks.Outline, List<Run>> days = new HashMap<>();
  private final Set<Chunks.Outline> askedOnce = new HashSet<>();
  private int samples;

  /** Returns a day's runs; null when they are not kept. */
  synchronized @Nullable List<Run> find(Chunks.Outline day) {
    return days.get(day);
  }

  /** Takes a day that was not found and had to be read. */
  synchronized void offer(Chunks.Outline day, List<Run> runs) {
    int count = runs.stream().mapToInt(Run::count).sum();
    if (count >= LEAST
        && !askedOnce.add(day)
        && samples + count <= CAPACITY
        && days.putIfAbsent(day, runs) == null) {
      samples += count;
    }
  }
}
