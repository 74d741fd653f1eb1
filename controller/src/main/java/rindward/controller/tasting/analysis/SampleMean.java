package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rindward.controller.keeping.Interval;
import rindward.controller.tasting.Scale;

/**
 * What a panel gave a sample on average.
 *
 * @param sample its name
 * @param mean of the panelists' scores; where cups are missing, as if everybody had tasted it
 * @param interval Student's interval of the mean as far as the scale goes, which speaks of tasters
 *     like these and not of other fruits; empty for a single panelist
 */
public record SampleMean(String sample, double mean, Optional<Interval> interval) {

  /**
   * Returns the means of a table, in the order of its samples, without those that nobody tasted.
   */
  static List<SampleMean> of(ScoreTable table, Scale scale) {
    double[] means = TableMeans.of(table);
    return IntStream.range(0, table.samples().size())
        .filter(sample -> table.column(sample).length > 0)
        .mapToObj(
            sample ->
                new SampleMean(
                    table.samples().get(sample),
                    within(means[sample], scale),
                    Interval.ofMean(table.column(sample))
                        .map(interval -> about(means[sample], interval, scale))))
        .toList();
  }

  /** As wide as it was, about the mean as if everybody had tasted, and no wider than the scale. */
  private static Interval about(double mean, Interval interval, Scale scale) {
    double reach = (interval.high() - interval.low()) / 2;
    return new Interval(within(mean - reach, scale), within(mean + reach, scale));
  }

  private static double within(double value, Scale scale) {
    return Math.max(scale.lowest(), Math.min(scale.highest(), value));
  }
}
