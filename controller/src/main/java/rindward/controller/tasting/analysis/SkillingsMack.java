package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import rindward.controller.tasting.analysis.RankGroups.Difference;
import rindward.controller.tasting.design.Draw;

/**
 * Whether a panel that missed some cups tells its samples apart (Skillings and Mack 1981,
 * Technometrics 23: 171). Each panelist ranks the s samples that were tasted, and ranks are weighed
 * so that one who tasted fewer speaks less:
 *
 * <pre>A_j = sum sqrt(12 / (s+1)) (rank_j - (s+1)/2),     T = A' C^- A
 * C_jj = sum (s-1) over the panelists who tasted j,  C_jk = - panelists who tasted j and k</pre>
 *
 * Without a missing cup and without ties T is Friedman's. How likely so large a T is comes from the
 * same scores dealt out anew within each panelist, which holds for any ties and any size.
 */
final class SkillingsMack {
  /** Any number does; always the same one makes the answer the same whenever it is asked for. */
  private static final long SEED = 1981;

  /** Sums of the same terms in another order differ in their last bits. */
  private static final double ROUNDING = 1e-9;

  private static final double CERTAINTY = 0.95;

  private final int samples;
  private final List<Row> rows;
  private final DMatrixRMaj covariance;
  private final DMatrixRMaj inverse;
  private final double[] sums;
  private final double statistic;
  private final double[] farthestPairs;
  private final PermutationP permutation;

  /** One panelist's weighed ranks, and which samples they belong to. */
  private record Row(int[] columns, double[] weighed) {}

  private SkillingsMack(int samples, List<Row> rows) {
    this.samples = samples;
    this.rows = rows;
    this.covariance = covariance();
    this.inverse = new DMatrixRMaj(samples, samples);
    CommonOps_DDRM.pinv(covariance, inverse);
    this.sums = sums(rows.stream().map(Row::weighed).toArray(double[][]::new));
    this.statistic = statistic(sums);
    int draws = Arrangements.draws(rows.stream().mapToInt(row -> row.columns().length).sum());
    this.farthestPairs = new double[draws];
    this.permutation = new PermutationP(PermutationP.Basis.SIMULATED, asFar(draws), draws + 1L);
  }

  /** Tests a table; empty where nobody tells two of the samples apart. */
  static Optional<SkillingsMack> of(ScoreTable table) {
    List<Row> rows =
        IntStream.range(0, table.panelists().size())
            .mapToObj(panelist -> row(table, panelist))
            .filter(row -> row.columns().length > 1)
            .toList();
    boolean differs =
        rows.stream().anyMatch(row -> Arrays.stream(row.weighed()).anyMatch(w -> w != 0));
    return rows.size() > 1 && differs
        ? Optional.of(new SkillingsMack(table.samples().size(), rows))
        : Optional.empty();
  }

  int panelists() {
    return rows.size();
  }

  /** Returns T. */
  double statistic() {
    return statistic;
  }

  PermutationP permutation() {
    return permutation;
  }

  /**
   * Returns which samples are held apart: those whose sums lie farther apart, in standard errors,
   * than the farthest pair does in 95 of 100 deals.
   */
  RankGroups pairs(List<String> names) {
    double[] sorted = farthestPairs.clone();
    Arrays.sort(sorted);
    double critical = sorted[(int) Math.ceil(CERTAINTY * sorted.length) - 1];
    List<Integer> order =
        IntStream.range(0, samples)
            .boxed()
            .sorted(Comparator.comparing((Integer i) -> sums[i]).reversed())
            .toList();
    List<Difference> differences = new ArrayList<>();
    for (int better = 0; better < samples; better++) {
      for (int worse = samples - 1; worse > better; worse--) {
        int i = order.get(better);
        int j = order.get(worse);
        if (apart(sums, i, j) > critical + ROUNDING) {
          differences.add(new Difference(names.get(i), names.get(j)));
        }
      }
    }
    return RankGroups.of(critical, order.stream().map(names::get).toList(), differences);
  }

  private static Row row(ScoreTable table, int panelist) {
    int[] columns = table.tastedBy(panelist);
    List<Integer> scores = table.scores().get(panelist);
    int[] doubled = MidRanks.doubled(Arrays.stream(columns).map(scores::get).toArray());
    int s = columns.length;
    double weight = Math.sqrt(12.0 / (s + 1));
    return new Row(
        columns,
        Arrays.stream(doubled).mapToDouble(rank -> weight * (rank - (s + 1)) / 2).toArray());
  }

  private DMatrixRMaj covariance() {
    DMatrixRMaj matrix = new DMatrixRMaj(samples, samples);
    for (Row row : rows) {
      for (int i : row.columns()) {
        for (int j : row.columns()) {
          matrix.add(i, j, i == j ? row.columns().length - 1 : -1);
        }
      }
    }
    return matrix;
  }

  private double[] sums(double[][] weighed) {
    double[] total = new double[samples];
    for (int row = 0; row < weighed.length; row++) {
      int[] columns = rows.get(row).columns();
      for (int i = 0; i < columns.length; i++) {
        total[columns[i]] += weighed[row][i];
      }
    }
    return total;
  }

  private double statistic(double[] of) {
    double total = 0;
    for (int i = 0; i < samples; i++) {
      for (int j = 0; j < samples; j++) {
        total += of[i] * inverse.get(i, j) * of[j];
      }
    }
    return total;
  }

  /** Returns how far two samples lie apart in standard errors; nothing if nobody tasted one. */
  private double apart(double[] of, int i, int j) {
    double variance = covariance.get(i, i) + covariance.get(j, j) - 2 * covariance.get(i, j);
    return covariance.get(i, i) == 0 || covariance.get(j, j) == 0
        ? 0
        : Math.abs(of[i] - of[j]) / Math.sqrt(variance);
  }

  private long asFar(int draws) {
    double[][] dealt = rows.stream().map(row -> row.weighed().clone()).toArray(double[][]::new);
    Draw draw = new Draw(SEED);
    long asFar = 1;
    for (int i = 0; i < draws; i++) {
      for (double[] row : dealt) {
        draw.shuffle(row);
      }
      double[] drawn = sums(dealt);
      if (statistic(drawn) >= statistic - ROUNDING) {
        asFar++;
      }
      farthestPairs[i] = farthest(drawn);
    }
    return asFar;
  }

  private double farthest(double[] of) {
    double farthest = 0;
    for (int i = 0; i < samples; i++) {
      for (int j = i + 1; j < samples; j++) {
        farthest = Math.max(farthest, apart(of, i, j));
      }
    }
    return farthest;
  }
}
