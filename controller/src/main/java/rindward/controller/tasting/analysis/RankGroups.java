package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which samples a panel holds apart, all pairs compared at once: two differ if their rank sums lie
 * {@code q sqrt(b k (k+1) / 12)} or more apart, which happens by chance to any pair at all in 5 %
 * of panels (Nemenyi 1963; Newell and MacFarlane 1987). Ties are not allowed for, which errs
 * towards "cannot be told apart".
 *
 * @param criticalDifference of rank sums
 * @param groups samples that cannot be told apart, best group first, best sample first; a sample
 *     may be in several
 * @param differences the pairs that differ, by the better one and then the worst first
 */
public record RankGroups(
    double criticalDifference, List<List<String>> groups, List<Difference> differences) {
  /** Half ranks are exact; this only forgives the last bits of the critical difference. */
  private static final double ROUNDING = 1e-9;

  /**
   * One sample was ranked above another by more than chance explains.
   *
   * @param better name of the sample with the higher scores
   * @param worse name of the other
   */
  public record Difference(String better, String worse) {}

  public RankGroups {
    groups = groups.stream().map(List::copyOf).toList();
    differences = List.copyOf(differences);
  }

  /**
   * Groups the samples of a test.
   *
   * @param samples names in the order of the test's rank sums
   */
  public static RankGroups of(List<String> samples, FriedmanStatistic test) {
    int k = samples.size();
    double critical = criticalDifference(test.panelists(), k);
    int doubledCritical = (int) Math.ceil(2 * critical - ROUNDING);
    List<Integer> sums = test.doubledRankSums();
    List<Integer> order =
        IntStream.range(0, k)
            .boxed()
            .sorted(Comparator.comparing(sums::get, Comparator.reverseOrder()))
            .toList();
    List<List<String>> groups = new ArrayList<>();
    List<Difference> differences = new ArrayList<>();
    int grouped = 0;
    for (int first = 0; first < k; first++) {
      int end = first;
      while (end < k && sums.get(order.get(first)) - sums.get(order.get(end)) < doubledCritical) {
        end++;
      }
      if (end > grouped) {
        groups.add(order.subList(first, end).stream().map(samples::get).toList());
        grouped = end;
      }
      for (int worse = k - 1; worse >= end; worse--) {
        differences.add(
            new Difference(samples.get(order.get(first)), samples.get(order.get(worse))));
      }
    }
    return new RankGroups(critical, groups, differences);
  }

  /**
   * Groups samples of which it is known which pairs differ.
   *
   * @param order names, the best first
   */
  static RankGroups of(double critical, List<String> order, List<Difference> differences) {
    List<List<String>> groups = new ArrayList<>();
    int grouped = 0;
    for (int first = 0; first < order.size(); first++) {
      int end = first + 1;
      while (end < order.size() && areAlike(order.subList(first, end + 1), differences)) {
        end++;
      }
      if (end > grouped) {
        groups.add(order.subList(first, end));
        grouped = end;
      }
    }
    return new RankGroups(critical, groups, differences);
  }

  private static boolean areAlike(List<String> names, List<Difference> differences) {
    return differences.stream()
        .noneMatch(d -> names.contains(d.better()) && names.contains(d.worse()));
  }

  /** Returns how far rank sums of {@code b} panelists and {@code k} samples must lie apart. */
  static double criticalDifference(int b, int k) {
    return StudentizedRange.upperFivePercent(k) * Math.sqrt(b * k * (k + 1) / 12.0);
  }
}
