package rindward.controller.variety;

import java.util.List;
import java.util.Map;
import rindward.controller.keeping.Fate;
import rindward.controller.tasting.analysis.AgedTaste;

/**
 * What one lot teaches about the next of its variety: how long its fruits kept, and how they were
 * liked at which age. A lot that is over teaches the same for ever, so this may be remembered.
 *
 * @param fates what became of its fruits, by days of life; none if it did not keep as it should
 * @param tastes none if it is set apart
 */
public record LotLesson(List<Fate> fates, List<AgedTaste> tastes) {
  public LotLesson {
    fates = List.copyOf(fates);
    tastes = List.copyOf(tastes);
  }

  /**
   * Returns what a lot teaches.
   *
   * @param closed what sessions that are over gave, by lot
   */
  public static LotLesson of(Grown grown, Map<String, List<Tasted>> closed) {
    List<SetApart> apart = SetApart.of(grown);
    return new LotLesson(
        SetApart.keepAsTheyShould(apart) ? Fates.byLife(grown) : List.of(),
        apart.isEmpty() ? Eating.aged(List.of(grown), closed) : List.of());
  }
}
