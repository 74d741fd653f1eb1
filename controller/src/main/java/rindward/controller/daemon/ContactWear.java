package rindward.controller.daemon;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.lot.Lots;
import rindward.controller.lot.OutputTried;
import rindward.controller.lot.Recorded;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.store.EventLog;

/**
 * Counts how often each contact has closed against the life that the settings state for it, from
 * what is kept. A contact counts as new from the day on which its output was last tried. {@link
 * #look} reads the disk and is for one thread; the findings are for any.
 */
final class ContactWear {
  private final List<OutputSetting> outputs;
  private final EventLog events;
  private final Map<String, Count> counts = new HashMap<>();
  private volatile Set<Finding> findings = Set.of();

  /** What was counted of one contact, and up to which event. */
  private record Count(long triedMillis, long upToId, int closings) {}

  ContactWear(List<OutputSetting> outputs, EventLog events) {
    this.outputs = outputs.stream().filter(output -> output.contactLife() > 0).toList();
    this.events = events;
  }

  /** Counts what came since the last look. */
  void look(List<Recorded> journal) {
    if (outputs.isEmpty()) {
      return;
    }
    Set<Finding> worn = new HashSet<>();
    long newestId = events.newestId();
    for (OutputSetting output : outputs) {
      Count count = counted(output, triedMillis(output, journal), newestId);
      counts.put(output.name(), count);
      if (count.closings >= output.contactLife()) {
        worn.add(new Finding(AlarmKind.CONTACT_WORN, output.name()));
      }
    }
    findings = Set.copyOf(worn);
  }

  /** Returns what was found at the last look. */
  Set<Finding> findings() {
    return findings;
  }

  private Count counted(OutputSetting output, long triedMillis, long newestId) {
    Count before = counts.get(output.name());
    if (before == null || before.triedMillis != triedMillis) {
      before = new Count(triedMillis, 0, 0);
    }
    int since = events.closings(output.room(), output.name(), triedMillis, before.upToId, newestId);
    return new Count(triedMillis, newestId, before.closings + since);
  }

  private static long triedMillis(OutputSetting output, List<Recorded> journal) {
    return Lots.standing(journal).stream()
        .map(Recorded::entry)
        .filter(OutputTried.class::isInstance)
        .map(OutputTried.class::cast)
        .filter(tried -> tried.room().equals(output.room()))
        .filter(tried -> tried.output().equals(output.name()))
        .mapToLong(tried -> tried.at().toEpochMilli())
        .max()
        .orElse(0);
  }
}
