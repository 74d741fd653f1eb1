package rindward.controller.tasting.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * How liking goes with age: at each day the mean of the tastes near it, those nearer and those of
 * sessions weighing more. It says nothing of days that no taste is near. Its constants are common
 * practice.
 */
public final class AgeCurve {
  /** A taste says nothing of days so far away. */
  private static final int REACH_DAYS = 21;

  /** Liking this far below the best still belongs to the window. */
  private static final double STILL_BEST = 0.5;

  /** Three sessions, or a dozen kitchen tastes. */
  private static final int ENOUGH_WEIGHT = 12;

  private static final int ENOUGH_DAYS = 30;

  private final List<AgedTaste> tastes;

  public AgeCurve(List<AgedTaste> tastes) {
    this.tastes = List.copyOf(tastes);
  }

  /** Returns the liking at an age; empty where nothing was tasted near it. */
  public OptionalDouble at(int day) {
    double weights = 0;
    double sum = 0;
    for (AgedTaste taste : tastes) {
      int near = REACH_DAYS - Math.abs(taste.day() - day);
      if (near > 0) {
        double weight = (double) near * taste.occasion().weight();
        weights += weight;
        sum += weight * taste.liking();
      }
    }
    return weights > 0 ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
  }

  /**
   * Returns the days around the best tasted one, within the ages that were tasted, on which it was
   * liked nearly as much; empty if nothing was tasted.
   */
  public Optional<EatingWindow> window() {
    if (tastes.isEmpty()) {
      return Optional.empty();
    }
    List<Integer> days = tastes.stream().map(AgedTaste::day).distinct().sorted().toList();
    int best =
        days.stream()
            .max(Comparator.comparingDouble((Integer day) -> at(day).orElseThrow()))
            .orElseThrow();
    double liking = at(best).orElseThrow();
    Edge start = edge(days.stream().filter(d -> d < best).sorted(Comparator.reverseOrder()), best);
    Edge end = edge(days.stream().filter(d -> d > best), best);
    int weight = tastes.stream().mapToInt(taste -> taste.occasion().weight()).sum();
    boolean isEnough =
        weight >= ENOUGH_WEIGHT && days.get(days.size() - 1) - days.get(0) >= ENOUGH_DAYS;
    return Optional.of(
        new EatingWindow(
            start.day(),
            end.day(),
            best,
            liking,
            tastes.size(),
            start.isSeen(),
            end.isSeen(),
            isEnough));
  }

  /** One end of the window, and whether it was liked less beyond. */
  private record Edge(int day, boolean isSeen) {}

  /** Follows the tasted days away from the best one until it was liked less. */
  private Edge edge(Stream<Integer> daysAway, int best) {
    double liking = at(best).orElseThrow();
    int edge = best;
    for (int day : daysAway.toList()) {
      if (!isStillBest(day, liking)) {
        int step = Integer.signum(day - edge);
        while (isStillBest(edge + step, liking)) {
          edge += step;
        }
        return new Edge(edge, true);
      }
      edge = day;
    }
    return new Edge(edge, false);
  }

  private boolean isStillBest(int day, double liking) {
    return at(day).orElse(0) >= liking - STILL_BEST;
  }
}
