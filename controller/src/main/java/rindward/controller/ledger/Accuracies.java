package rindward.controller.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;

/**
 * How good the probes of every room were, and since when. Read from the journal once, however many
 * lots are asked about.
 */
public final class Accuracies {
  private final Map<String, List<AccuracyStated>> byRoom = new HashMap<>();

  /** Reads the whole journal. */
  public static Accuracies of(List<Recorded> journal) {
    Accuracies accuracies = new Accuracies();
    for (Recorded recorded : Lots.standing(journal)) {
      if (recorded.entry() instanceof AccuracyStated stated) {
        accuracies.byRoom.computeIfAbsent(stated.room(), room -> new ArrayList<>()).add(stated);
      }
    }
    accuracies
        .byRoom
        .values()
        .forEach(stated -> stated.sort(Comparator.comparing(AccuracyStated::at)));
    return accuracies;
  }

  /** Returns what was stated of a room's probes, in time order. */
  List<AccuracyStated> in(String room) {
    return byRoom.getOrDefault(room, List.of());
  }
}
