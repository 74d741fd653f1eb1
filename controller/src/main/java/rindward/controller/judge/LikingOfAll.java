package rindward.controller.judge;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.variety.TrialRecord;
import rindward.controller.variety.liking.LikingEstimate;
import rindward.controller.variety.liking.TasteScore;

/**
 * What all scores say together, worked out again only when another score is told: it takes some
 * seconds after ten seasons. A cache; for any thread.
 */
final class LikingOfAll {
  private volatile @Nullable Known known;

  private record Known(
      List<TasteScore> scores, Map<String, String> checks, LikingEstimate estimate) {}

  /** Returns the same record with what its scores say. */
  synchronized TrialRecord with(TrialRecord trials) {
    List<TasteScore> scores = trials.scores();
    Map<String, String> checks = trials.checkOfType();
    Known last = known;
    if (last == null || !last.scores().equals(scores) || !last.checks().equals(checks)) {
      last = new Known(scores, checks, LikingEstimate.of(scores, checks));
      known = last;
    }
    return trials.with(last.estimate());
  }
}
