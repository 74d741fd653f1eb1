package rindward.controller.tasting.analysis;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rindward.controller.keeping.Interval;

/**
 * What a panel gave a sample on average.
 *
 * @param sample its name
 * @param mean of the panelists' scores
 * @param interval Student's interval of the mean, which speaks of tasters like these and not of
 *     other fruits; may reach beyond the scale; empty for a single panelist
 */
public record SampleMean(String sample, double mean, Optional<Interval> interval) {

  /** Returns the means of a table with at least one panelist, in the order of its samples. */
  static List<SampleMean> of(ScoreTable table) {
    return IntStream.range(0, table.samples().size())
        .mapToObj(
            sample -> {
              double[] scores = table.column(sample);
              return new SampleMean(
                  table.samples().get(sample), Interval.mean(scores), Interval.ofMean(scores));
            })
        .toList();
  }
}
