package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What each panelist gave each sample: one attribute, one flight. A cup that was not tasted leaves
 * its place empty and everything else as it is.
 *
 * @param panelists one name a row
 * @param samples one name a column
 * @param scores by panelist, then by sample; {@link #NOT_TASTED} where there is none
 */
public record ScoreTable(List<String> panelists, List<String> samples, List<List<Integer>> scores) {
  /** Stands for a missing score; below every scale. */
  public static final int NOT_TASTED = -1;

  public ScoreTable {
    panelists = List.copyOf(panelists);
    samples = List.copyOf(samples);
    scores = scores.stream().map(List::copyOf).toList();
    int columns = samples.size();
    if (scores.size() != panelists.size()
        || scores.stream().anyMatch(row -> row.size() != columns)) {
      throw new IllegalArgumentException(
          "scores were "
              + scores
              + " but there must be one row for each of "
              + panelists
              + " and one place in it for each of "
              + samples);
    }
  }

  /** Returns how many scores there are. */
  public int tasted() {
    return (int) scores.stream().flatMap(List::stream).filter(ScoreTable::isTasted).count();
  }

  /** Tells whether every panelist scored every sample. */
  boolean isComplete() {
    return tasted() == panelists.size() * samples.size();
  }

  /** Tells whether there is a score. */
  static boolean isTasted(int score) {
    return score != NOT_TASTED;
  }

  /** Returns all that one panelist gave, {@link #NOT_TASTED} among it. */
  int[] row(int panelist) {
    return scores.get(panelist).stream().mapToInt(Integer::intValue).toArray();
  }

  /** Returns the columns of the samples that one panelist scored. */
  int[] tastedBy(int panelist) {
    List<Integer> row = scores.get(panelist);
    return IntStream.range(0, row.size()).filter(sample -> isTasted(row.get(sample))).toArray();
  }

  /** Returns the scores that one sample was given. */
  double[] column(int sample) {
    return scores.stream()
        .mapToDouble(row -> row.get(sample))
        .filter(score -> isTasted((int) score))
        .toArray();
  }
}
