package rindward.controller.keeping;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The weights of one tagged fruit, or of one crate whose count did not change. A weight heavier
 * than the one before is kept: scales differ.
 *
 * @param weighings in the order of their days
 */
public record WeightSeries(List<Weighing> weighings) {
  static final int MONTH_DAYS = 30;

  public WeightSeries {
    weighings = weighings.stream().sorted(Comparator.comparingDouble(Weighing::day)).toList();
  }

  /**
   * Returns the weight lost at each weighing, in percent of the first weight; the first is zero.
   */
  public double[] lossPct() {
    return weighings.stream()
        .mapToDouble(w -> 100 * (1 - w.grams() / weighings.get(0).grams()))
        .toArray();
  }

  /** Returns the line of loss (percent) over days; empty where two weighings say all there is. */
  Optional<RegressionLine> line() {
    return weighings.size() < 3 || !spansTime()
        ? Optional.empty()
        : Optional.of(RegressionLine.through(days(), lossPct()));
  }

  /** Returns the percentage lost in 30 days; empty if it was not weighed on two different days. */
  OptionalDouble monthlyLossPct() {
    if (!spansTime()) {
      return OptionalDouble.empty();
    }
    double[] loss = lossPct();
    double[] days = days();
    int last = loss.length - 1;
    double perDay =
        line().map(RegressionLine::slope).orElseGet(() -> loss[last] / (days[last] - days[0]));
    return OptionalDouble.of(MONTH_DAYS * perDay);
  }

  private boolean spansTime() {
    return weighings.size() > 1
        && weighings.get(weighings.size() - 1).day() > weighings.get(0).day();
  }

  private double[] days() {
    return weighings.stream().mapToDouble(Weighing::day).toArray();
  }
}
