package rindward.controller.command.lot;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.stream.Collectors;
import rindward.controller.command.base.FarmTime;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;

/**
 * One thing that was said of a lot and still stands.
 *
 * @param entry its number, by which it may be corrected
 * @param fields what it said, by the columns of a file of lots
 */
record StatedEntry(long entry, Instant at, String by, Map<String, String> fields) {
  static StatedEntry of(Recorded recorded) {
    Map<String, String> fields =
        recorded.entry() instanceof OfLot || recorded.entry() instanceof NewerEntry
            ? EntryKinds.row(recorded.entry())
            : Map.of();
    return new StatedEntry(recorded.id(), recorded.entry().at(), recorded.by(), fields);
  }

  /** Returns it in one line, its number first, by the farm's clock. */
  String line(ZoneId zone) {
    return "%5d  %s  %s  %s"
        .formatted(
            entry,
            FarmTime.words(at, zone),
            by,
            fields.entrySet().stream()
                .filter(e -> !e.getKey().equals("lot") && !e.getKey().equals("at"))
                .filter(e -> !e.getValue().isEmpty())
                .map(
                    e -> e.getKey().equals("kind") ? e.getValue() : e.getKey() + "=" + e.getValue())
                .collect(Collectors.joining(" ")));
  }
}
