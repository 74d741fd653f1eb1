package rindward.controller.tasting.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rindward.controller.keeping.PValue;

/**
 * Chances corrected for having asked several questions (Holm 1979, Scandinavian Journal of
 * Statistics 6: 65): the smallest is multiplied by their number, the next by one less, and none
 * falls below one before it. Any of them at 5 % is then wrong in at most 5 % of sessions.
 */
final class Holm {
  private Holm() {}

  /** Returns the corrected chances in the same order. */
  static List<PValue> correct(List<PValue> chances) {
    int count = chances.size();
    List<PValue> corrected = new ArrayList<>(chances);
    double least = 0;
    int left = count;
    for (int i :
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparing(i -> chances.get(i).value()))
            .toList()) {
      least = Math.max(least, Math.min(1, left * chances.get(i).value()));
      corrected.set(i, new PValue(least));
      left--;
    }
    return corrected;
  }
}
