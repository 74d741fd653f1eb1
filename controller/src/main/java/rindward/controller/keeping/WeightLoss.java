package rindward.controller.keeping;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How fast a lot loses weight. Each tagged fruit is one witness: its own line gives its rate, and
 * the spread between fruits gives the interval. A single series has only the scatter about its
 * line.
 *
 * @param monthlyPct percent of the first weight lost in 30 days; negative if it grew heavier
 * @param interval of that rate; empty where there is neither a second fruit nor a third weighing
 * @param series how many fruits or crates were weighed at least twice
 */
public record WeightLoss(double monthlyPct, Optional<Interval> interval, int series) {

  /** Returns the rate; empty if nothing was weighed on two different days. */
  public static Optional<WeightLoss> of(List<WeightSeries> all) {
    List<WeightSeries> told = all.stream().filter(s -> s.monthlyLossPct().isPresent()).toList();
    if (told.isEmpty()) {
      return Optional.empty();
    }
    double[] rates = told.stream().mapToDouble(s -> s.monthlyLossPct().getAsDouble()).toArray();
    Optional<Interval> interval =
        told.size() > 1
            ? Interval.ofMean(rates)
            : told.get(0).line().map(RegressionLine::slopeInterval).map(WeightLoss::monthly);
    double mean = Interval.mean(rates);
    return Optional.of(new WeightLoss(mean, interval.map(i -> withinScale(i, mean)), told.size()));
  }

  /** Returns the rate as one sentence. */
  public String sentence() {
    String rate = String.format(Locale.ROOT, "Loses %.1f %% of its weight in 30 days", monthlyPct);
    String from = series == 1 ? "one series of weights" : series + " series of weights";
    return interval
        .map(
            i ->
                String.format(
                    Locale.ROOT, "%s (%.1f to %.1f %%), by %s.", rate, i.low(), i.high(), from))
        .orElse(rate + ", by two weighings; a third would tell how sure that is.");
  }

  /** Nothing loses more than all of its weight, and what lies in store grows no heavier. */
  private static Interval withinScale(Interval interval, double mean) {
    double low = Math.min(mean, 0);
    double high = Math.max(mean, 100);
    return new Interval(
        Math.max(low, Math.min(high, interval.low())),
        Math.max(low, Math.min(high, interval.high())));
  }

  private static Interval monthly(Interval daily) {
    return new Interval(
        WeightSeries.MONTH_DAYS * daily.low(), WeightSeries.MONTH_DAYS * daily.high());
  }
}
