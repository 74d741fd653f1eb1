package rindward.dashboard.lots;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a lot's variety was liked at each age: what may be judged of all its lots, over the years.
 *
 * @param tastes in the order of their days
 * @param curve the mean of what was tasted near each day; empty where it was tasted on one day only
 * @param sentence when it was liked best; null likewise
 */
public record LikingView(List<AgedView> tastes, List<PointView> curve, @Nullable String sentence) {
  public LikingView {
    tastes = List.copyOf(tastes);
    curve = List.copyOf(curve);
  }

  /**
   * One taste.
   *
   * @param day days since harvest
   * @param liking on the nine-point scale; of a session its mean
   * @param isBlind whether a session said it, and not one person in the kitchen
   */
  public record AgedView(String lot, int day, double liking, boolean isBlind) {}

  /** A point of the curve. */
  public record PointView(int day, double liking) {}
}
