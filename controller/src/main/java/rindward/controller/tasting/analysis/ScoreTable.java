package rindward.controller.tasting.analysis;

import java.util.List;

/**
 * What each panelist gave each sample, nothing missing: one attribute, one flight.
 *
 * @param panelists one name a row
 * @param samples one name a column
 * @param scores by panelist, then by sample
 */
public record ScoreTable(List<String> panelists, List<String> samples, List<List<Integer>> scores) {
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
              + " and one score in it for each of "
              + samples);
    }
  }

  /** Returns all that one panelist gave. */
  int[] row(int panelist) {
    return scores.get(panelist).stream().mapToInt(Integer::intValue).toArray();
  }

  /** Returns all that one sample was given. */
  double[] column(int sample) {
    return scores.stream().mapToDouble(row -> row.get(sample)).toArray();
  }
}
