package rindward.controller.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import rindward.controller.journal.AccuracyStated;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;

/**
 * A stretch of a lot's life in one place, measured by probes of one accuracy.
 *
 * @param history what was measured there; empty for a place without a probe
 * @param accuracy of the probes, as it was stated at the time
 * @param fromMillis inclusive
 * @param toMillis exclusive
 */
public record Exposure(History history, Accuracy accuracy, long fromMillis, long toMillis) {

  /**
   * Returns a lot's life from harvest until now, or until its last fruit was gone, cut wherever it
   * moved and wherever the accuracy of a room's probes was stated anew. Computed from the journal
   * each time, so a corrected move is simply another life.
   *
   * @param historyOf what was measured in a place; an empty history for a place without probes
   */
  public static List<Exposure> of(
      Lot lot, Accuracies accuracies, Function<String, History> historyOf, Instant now) {
    List<Exposure> life = new ArrayList<>();
    Instant last = lot.emptied().filter(gone -> gone.isBefore(now)).orElse(now);
    for (Stay stay : lot.stays()) {
      Instant end = stay.to().isBefore(last) ? stay.to() : last;
      if (!stay.from().isBefore(end)) {
        continue;
      }
      History history = historyOf.apply(stay.place());
      long from = stay.from().toEpochMilli();
      Accuracy accuracy = Accuracy.EXACT;
      for (AccuracyStated stated : accuracies.in(stay.place())) {
        long since = stated.at().toEpochMilli();
        if (since > from && since < end.toEpochMilli()) {
          life.add(new Exposure(history, accuracy, from, since));
          from = since;
        }
        if (since <= from) {
          accuracy = new Accuracy(stated.temperatureMilliC(), stated.humidityMilliPct());
        }
      }
      life.add(new Exposure(history, accuracy, from, end.toEpochMilli()));
    }
    return life;
  }

  /** Returns the part of this stretch from an instant on; the whole if it began later. */
  public Exposure from(long millis) {
    return new Exposure(history, accuracy, Math.max(fromMillis, millis), toMillis);
  }
}
