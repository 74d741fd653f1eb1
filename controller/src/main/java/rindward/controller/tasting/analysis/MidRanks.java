package rindward.controller.tasting.analysis;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * One panelist's scores as ranks, the lowest score first; equal scores share the middle of their
 * ranks. Ranks are doubled all through, so that halves stay integers.
 */
final class MidRanks {
  private MidRanks() {}

  /** Returns twice the mid-rank of each value. */
  static int[] doubled(int[] values) {
    return Arrays.stream(values)
        .map(
            value -> {
              int below = (int) Arrays.stream(values).filter(v -> v < value).count();
              int equal = (int) Arrays.stream(values).filter(v -> v == value).count();
              return 2 * below + equal + 1;
            })
        .toArray();
  }

  /** Returns the doubled mid-ranks of a whole table, by panelist. */
  static int[][] of(ScoreTable table) {
    return IntStream.range(0, table.panelists().size())
        .mapToObj(panelist -> doubled(table.row(panelist)))
        .toArray(int[][]::new);
  }

  /** Returns the sum of {@code t^3 - t} over the panelist's ties of {@code t} samples each. */
  static long tieTerm(int[] ranks) {
    // Each of t equal ranks adds t^2 - 1.
    return Arrays.stream(ranks)
        .mapToLong(
            rank -> {
              long tied = Arrays.stream(ranks).filter(r -> r == rank).count();
              return tied * tied - 1;
            })
        .sum();
  }
}
