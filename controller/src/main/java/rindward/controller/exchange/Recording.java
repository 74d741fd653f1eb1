package rindward.controller.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import rindward.controller.ledger.History;
import rindward.controller.ledger.Run;

/**
 * What a logger recorded, in time order. Of rows with equal times the last in the file counts.
 * Immutable.
 */
public final class Recording implements History {
  private final List<Run> runs;
  private final long rows;
  private final long headerLine;
  private final long rejectedRows;
  private final List<RejectedRow> rejected;

  /**
   * Orders what was read.
   *
   * @param samples in the order of the file; is sorted in place
   */
  Recording(
      List<RecordedSample> samples,
      long headerLine,
      long rejectedRows,
      List<RejectedRow> rejected) {
    this.rows = samples.size();
    this.headerLine = headerLine;
    this.rejectedRows = rejectedRows;
    this.rejected = List.copyOf(rejected);
    samples.sort(Comparator.comparingLong(RecordedSample::atMillis));
    this.runs = runs(lastOfEachInstant(samples));
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
    return runs.get(0).startMillis();
  }

  /** Returns the instant of the last sample in epoch milliseconds; there must be one. */
  public long lastMillis() {
    return runs.get(runs.size() - 1).lastMillis();
  }

  @Override
  public void forEach(long fromMillis, long toMillis, Consumer<Run> visit) {
    for (Run run : runs) {
      if (run.lastMillis() >= fromMillis && run.startMillis() < toMillis) {
        visit.accept(run);
      }
    }
  }

  private static List<RecordedSample> lastOfEachInstant(List<RecordedSample> sorted) {
    List<RecordedSample> kept = new ArrayList<>(sorted.size());
    for (int i = 0; i < sorted.size(); i++) {
      boolean last =
          i + 1 == sorted.size() || sorted.get(i + 1).atMillis() != sorted.get(i).atMillis();
      if (last) {
        kept.add(sorted.get(i));
      }
    }
    return kept;
  }

  private static List<Run> runs(List<RecordedSample> samples) {
    List<Run> runs = new ArrayList<>();
    int start = 0;
    while (start < samples.size()) {
      int end = endOfRun(samples, start);
      runs.add(run(samples.subList(start, end)));
      start = end;
    }
    return List.copyOf(runs);
  }

  /** Returns where the even spacing that begins at {@code start} ends, exclusive. */
  private static int endOfRun(List<RecordedSample> samples, int start) {
    int end = start + 1;
    if (end == samples.size() || step(samples, end) > Integer.MAX_VALUE) {
      return end;
    }
    long step = step(samples, end);
    while (end < samples.size() && step(samples, end) == step) {
      end++;
    }
    return end;
  }

  private static long step(List<RecordedSample> samples, int i) {
    return samples.get(i).atMillis() - samples.get(i - 1).atMillis();
  }

  private static Run run(List<RecordedSample> even) {
    int step = even.size() == 1 ? 1 : Math.toIntExact(step(even, 1));
    return new Run(
        even.get(0).atMillis(),
        step,
        even.size(),
        even.stream().mapToInt(RecordedSample::temperatureMilliC).toArray(),
        even.stream().mapToInt(RecordedSample::humidityMilliPct).toArray());
  }
}
