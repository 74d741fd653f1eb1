package rindward.controller.store.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;
import rindward.controller.ledger.Run;

/**
 * Hands over a history day by day as its chunks are read. A finished day is handed on as it comes;
 * the pieces of an unfinished one are joined into long runs, with the samples still in memory.
 */
final class SampleDays {
  private final TreeMap<Long, List<Run>> held = new TreeMap<>();
  private final long fromMillis;
  private final long toMillis;
  private final Consumer<Run> visit;
  private final List<Run> pieces = new ArrayList<>();
  private int chunks;
  private long day;

  SampleDays(List<Run> heldRuns, long fromMillis, long toMillis, Consumer<Run> visit) {
    for (Run run : heldRuns) {
      held.computeIfAbsent(Samples.dayOf(run), d -> new ArrayList<>()).add(run);
    }
    this.fromMillis = fromMillis;
    this.toMillis = toMillis;
    this.visit = visit;
  }

  /** Takes the next chunk, each later than the one before. */
  void add(Chunks.Outline chunk, List<Run> runs) {
    long dayOfChunk = Samples.dayOf(chunk.first());
    if (chunks > 0 && dayOfChunk != day) {
      endDay();
    }
    day = dayOfChunk;
    chunks++;
    pieces.addAll(runs);
  }

  /** Hands over what is left. */
  void end() {
    if (chunks > 0) {
      endDay();
    }
    held.values().forEach(this::hand);
  }

  private void endDay() {
    while (!held.isEmpty() && held.firstKey() < day) {
      hand(held.pollFirstEntry().getValue());
    }
    List<Run> ofDay = held.remove(day);
    if (chunks == 1 && ofDay == null) {
      hand(pieces);
    } else {
      Samples joined = new Samples();
      pieces.forEach(joined::add);
      if (ofDay != null) {
        ofDay.forEach(joined::add);
      }
      hand(joined.runs());
    }
    pieces.clear();
    chunks = 0;
  }

  private void hand(List<Run> runs) {
    for (Run run : runs) {
      if (run.startMillis() < toMillis && run.lastMillis() >= fromMillis) {
        visit.accept(run);
      }
    }
  }
}
