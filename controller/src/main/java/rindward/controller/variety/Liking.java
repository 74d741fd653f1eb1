package rindward.controller.variety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import rindward.controller.tasting.analysis.AgeCurve;
import rindward.controller.tasting.analysis.AgedTaste;

/**
 * How lots of one variety were liked at the ages at which they were tasted. A lot that is set apart
 * says nothing here.
 *
 * @param tastes in the order of their days
 */
public record Liking(List<OfLot> tastes) {
  public Liking {
    tastes = List.copyOf(tastes);
  }

  /** One taste, and the code of the lot it was of. */
  public record OfLot(String lot, AgedTaste taste) {}

  /**
   * Gathers what was said.
   *
   * @param closed what sessions that are over gave, by lot
   */
  public static Liking of(List<Grown> lots, Map<String, List<Tasted>> closed) {
    List<OfLot> tastes = new ArrayList<>();
    for (Grown grown : lots) {
      if (SetApart.of(grown).isEmpty()) {
        Eating.aged(List.of(grown), closed)
            .forEach(taste -> tastes.add(new OfLot(grown.lot().code(), taste)));
      }
    }
    tastes.sort(
        Comparator.comparingInt((OfLot each) -> each.taste().day()).thenComparing(OfLot::lot));
    return new Liking(tastes);
  }

  /** Returns the mean through all of them. */
  public AgeCurve curve() {
    return new AgeCurve(tastes.stream().map(OfLot::taste).toList());
  }

  /** Tells whether it was tasted at more than one age. */
  public boolean hasAges() {
    return tastes.stream().mapToInt(each -> each.taste().day()).distinct().count() > 1;
  }
}
