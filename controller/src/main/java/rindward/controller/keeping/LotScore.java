package rindward.controller.keeping;

import java.util.ArrayList;
import java.util.List;

/**
 * How one lot kept beside its fellows: the mean over its fruits of losses less expected losses (the
 * log-rank score of Mantel 1966, the martingale residual of a later name), the expectation being
 * that of all lots of that season and room together.
 *
 * @param beside season and room
 * @param isFirst which of the two groups it belongs to
 * @param score positive if it lost more than its fellows
 */
record LotScore(String beside, boolean isFirst, double score) {

  /** Scores the lots that stood beside lots of the other group; others tell nothing. */
  static List<LotScore> of(List<KeptLot> first, List<KeptLot> second) {
    List<LotScore> scores = new ArrayList<>();
    first.stream()
        .map(KeptLot::beside)
        .distinct()
        .sorted()
        .forEach(
            beside -> scores.addAll(beside(beside, lots(first, beside), lots(second, beside))));
    return List.copyOf(scores);
  }

  private static List<KeptLot> lots(List<KeptLot> all, String beside) {
    return all.stream().filter(lot -> lot.beside().equals(beside) && lot.fruits() > 0).toList();
  }

  private static List<LotScore> beside(String beside, List<KeptLot> first, List<KeptLot> second) {
    if (first.isEmpty() || second.isEmpty()) {
      return List.of();
    }
    List<Fate> all = new ArrayList<>();
    first.forEach(lot -> all.addAll(lot.fates()));
    second.forEach(lot -> all.addAll(lot.fates()));
    CumulativeHazard hazard = CumulativeHazard.of(all);
    List<LotScore> scores = new ArrayList<>();
    first.forEach(lot -> scores.add(new LotScore(beside, true, score(lot, hazard))));
    second.forEach(lot -> scores.add(new LotScore(beside, false, score(lot, hazard))));
    return scores;
  }

  private static double score(KeptLot lot, CumulativeHazard hazard) {
    double sum = 0;
    for (Fate fate : lot.fates()) {
      sum += fate.fruits() * ((fate.ending().isLoss() ? 1 : 0) - hazard.at(fate.day()));
    }
    return sum / lot.fruits();
  }
}
