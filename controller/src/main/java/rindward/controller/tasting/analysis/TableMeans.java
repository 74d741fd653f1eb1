package rindward.controller.tasting.analysis;

import java.util.Arrays;

/**
 * The mean of each sample as if everybody had tasted it: a panelist's level is taken out of the
 * scores and the mean level put back (least squares for panelists and samples; where no cup is
 * missing these are the plain means). Without it a sample that the harshest taster missed would
 * look better for that.
 */
final class TableMeans {
  /** Each sweep leaves a fraction of the error; this many leave none that could be seen. */
  private static final int SWEEPS = 200;

  private TableMeans() {}

  /** Returns one mean a sample; of no meaning for a sample that nobody tasted. */
  static double[] of(ScoreTable table) {
    int panelists = table.panelists().size();
    double[] levels = new double[panelists];
    double[] means = new double[table.samples().size()];
    for (int sweep = 0; sweep < (table.isComplete() ? 1 : SWEEPS); sweep++) {
      Arrays.setAll(means, sample -> sampleMean(table, levels, sample));
      for (int panelist = 0; panelist < panelists; panelist++) {
        levels[panelist] = level(table, means, panelist);
      }
      double middle = Arrays.stream(levels).average().orElse(0);
      Arrays.setAll(levels, panelist -> levels[panelist] - middle);
    }
    return means;
  }

  private static double sampleMean(ScoreTable table, double[] levels, int sample) {
    double sum = 0;
    int tasted = 0;
    for (int panelist = 0; panelist < levels.length; panelist++) {
      int score = table.scores().get(panelist).get(sample);
      if (ScoreTable.isTasted(score)) {
        sum += score - levels[panelist];
        tasted++;
      }
    }
    return tasted == 0 ? 0 : sum / tasted;
  }

  private static double level(ScoreTable table, double[] means, int panelist) {
    int[] tasted = table.tastedBy(panelist);
    return Arrays.stream(tasted)
        .mapToDouble(sample -> table.scores().get(panelist).get(sample) - means[sample])
        .average()
        .orElse(0);
  }
}
