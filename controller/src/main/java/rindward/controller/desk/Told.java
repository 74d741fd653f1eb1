package rindward.controller.desk;

import java.util.List;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Recorded;
import rindward.controller.ledger.Accuracies;
import rindward.controller.lot.Lots;
import rindward.controller.lot.Session;
import rindward.controller.lot.Sessions;

/**
 * Everything said so far, and the lots it tells.
 *
 * @param sessions every tasting, those under way included
 * @param accuracies how good the probes were, and since when
 * @param last number of the last entry; 0 for none
 * @param lastAccuracy number of the last entry on which the account of every lot depends
 */
record Told(
    List<Recorded> journal,
    Lots lots,
    List<Session> sessions,
    Accuracies accuracies,
    long last,
    long lastAccuracy) {
  static Told of(List<Recorded> journal) {
    long accuracy = 0;
    for (Recorded recorded : journal) {
      accuracy = recorded.entry() instanceof AccuracyStated ? recorded.id() : accuracy;
    }
    return new Told(
        journal,
        Lots.of(journal),
        List.copyOf(Sessions.of(journal).all()),
        Accuracies.of(journal),
        last(journal),
        accuracy);
  }

  static long last(List<Recorded> journal) {
    return journal.isEmpty() ? 0 : journal.get(journal.size() - 1).id();
  }
}
