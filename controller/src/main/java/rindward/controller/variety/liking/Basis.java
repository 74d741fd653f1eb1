package rindward.controller.variety.liking;

import java.util.Arrays;
import java.util.List;

/**
 * What an estimate rests on; each thing is counted once, however often it was tasted.
 *
 * @param fruits that were not seen to be unripe
 * @param sessions at which it was served
 * @param kitchenScores given outside of any session
 */
public record Basis(
    int fruits, int lots, int seasons, int tasters, int sessions, int kitchenScores) {
  static Basis of(List<TasteScore> rows) {
    return new Basis(
        (int)
            rows.stream()
                .filter(r -> !r.isUnripe())
                .flatMap(r -> Arrays.stream(r.fruit().split(TasteScore.AND)).map(r.lot()::concat))
                .distinct()
                .count(),
        (int) rows.stream().map(TasteScore::lot).distinct().count(),
        (int) rows.stream().map(TasteScore::season).distinct().count(),
        (int) rows.stream().map(TasteScore::taster).distinct().count(),
        (int)
            rows.stream()
                .map(TasteScore::session)
                .filter(session -> !session.isEmpty())
                .distinct()
                .count(),
        (int) rows.stream().filter(r -> r.manner() == Manner.KITCHEN).count());
  }
}
