package rindward.controller.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rindward.controller.exchange.SampleBlock.Cursor;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;

/**
 * What a logger recorded, in time order. Of rows with equal times the last in the file counts.
 * Immutable; a few bytes a row.
 */
public final class Recording implements History {
  private static final Comparator<Cursor> BY_TIME_THEN_PLACE =
      Comparator.comparingLong(Cursor::atMillis).thenComparingInt(Cursor::place);

  private final List<SampleBlock> blocks;
  private final long rows;
  private final long headerLine;
  private final long rejectedRows;
  private final List<RejectedRow> rejected;

  /**
   * Takes over what was read.
   *
   * @param blocks in the order of the file
   */
  Recording(
      List<SampleBlock> blocks,
      long rows,
      long headerLine,
      long rejectedRows,
      List<RejectedRow> rejected) {
    this.blocks = List.copyOf(blocks);
    this.rows = rows;
    this.headerLine = headerLine;
    this.rejectedRows = rejectedRows;
    this.rejected = List.copyOf(rejected);
  }

  /** Returns how many rows were used; of rows with equal times each counts. */
  public long rows() {
    return rows;
  }

  /** Returns the line that was taken as a header, from 1; 0 if there was none. */
  public long headerLine() {
    return headerLine;
  }

  /** Returns how many rows were left out because they could not be read. */
  public long rejectedRows() {
    return rejectedRows;
  }

  /** Returns the first of the rows left out, each with its reason; not all of a long list. */
  public List<RejectedRow> rejected() {
    return rejected;
  }

  /** Returns the instant of the first sample in epoch milliseconds; there must be one. */
  public long firstMillis() {
    return blocks.stream().mapToLong(SampleBlock::firstMillis).min().orElseThrow();
  }

  /** Returns the instant of the last sample in epoch milliseconds; there must be one. */
  public long lastMillis() {
    return blocks.stream().mapToLong(SampleBlock::lastMillis).max().orElseThrow();
  }

  @Override
  public void forEach(long fromMillis, long toMillis, Consumer<Run> visit) {
    EvenRuns runs = new EvenRuns(visit);
    List<Cursor> waiting = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      SampleBlock block = blocks.get(i);
      if (block.lastMillis() >= fromMillis && block.firstMillis() < toMillis) {
        waiting.add(block.open(i));
      }
    }
    waiting.sort(BY_TIME_THEN_PLACE.reversed());
    PriorityQueue<Cursor> open = new PriorityQueue<>(BY_TIME_THEN_PLACE);
    while (!open.isEmpty() || !waiting.isEmpty()) {
      while (!waiting.isEmpty() && isNext(waiting.get(waiting.size() - 1), open.peek())) {
        open.add(waiting.remove(waiting.size() - 1));
      }
      Cursor next = open.remove();
      if (next.atMillis() >= fromMillis && next.atMillis() < toMillis) {
        runs.take(next.atMillis(), next.temperatureMilliC(), next.humidityMilliPct());
      }
      if (next.next()) {
        open.add(next);
      }
    }
    runs.finish();
  }

  private static boolean isNext(Cursor waiting, @Nullable Cursor open) {
    return open == null || waiting.atMillis() <= open.atMillis();
  }
}
