package rindward.controller.judge;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.VarietyDecided;
import rindward.controller.ledger.Accuracies;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.lot.Sessions;

/**
 * Everything said so far, and what it tells.
 *
 * @param sessions every tasting in the order in which they were planned, those under way included
 * @param accuracies how good the probes were, and since when
 * @param decisions what was decided of varieties, in the order in which it was
 * @param last number of the last entry; 0 for none
 * @param lastAccuracy number of the last entry on which the account of every lot depends
 */
public record JournalView(
    List<Recorded> journal,
    Lots lots,
    List<Session> sessions,
    Accuracies accuracies,
    List<VarietyDecided> decisions,
    long last,
    long lastAccuracy) {
  public JournalView {
    sessions = List.copyOf(sessions);
    decisions = List.copyOf(decisions);
  }

  /** Tells the whole journal. */
  public static JournalView of(List<Recorded> journal) {
    return after(null, journal);
  }

  /**
   * Tells the whole journal, and keeps of what was told before the sessions that are the same: what
   * a closed one gave was worked out already.
   */
  public static JournalView after(@Nullable JournalView before, List<Recorded> journal) {
    if (before != null && before.last() == last(journal)) {
      return before;
    }
    long accuracy = 0;
    List<VarietyDecided> decisions = new ArrayList<>();
    for (Recorded recorded : Lots.standing(journal)) {
      if (recorded.entry() instanceof VarietyDecided decided) {
        decisions.add(decided);
      }
    }
    for (Recorded recorded : journal) {
      accuracy = recorded.entry() instanceof AccuracyStated ? recorded.id() : accuracy;
    }
    List<Session> known = before == null ? List.of() : before.sessions();
    return new JournalView(
        journal,
        Lots.of(journal),
        List.copyOf(Sessions.of(journal, known).all()),
        Accuracies.of(journal),
        decisions,
        last(journal),
        accuracy);
  }

  private static long last(List<Recorded> journal) {
    return journal.isEmpty() ? 0 : journal.get(journal.size() - 1).id();
  }
}
