package rindward.controller.daemon;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.store.SwitchingLog;

/**
 * Counts how often each contact has closed against the life that the settings state for it, from
 * what is kept. A contact counts as new from the day on which its output was last tried. {@link
 * #look} reads the disk and is for one thread; the findings are for any.
 */
final class ContactWear {
  private final List<OutputSetting> outputs;
  private final SwitchingLog switchings;
  private final Map<String, Count> counts = new HashMap<>();
  private volatile Set<Finding> findings = Set.of();

  /** What was counted of one contact, and up to when. */
  private record Count(long triedMillis, long upToMillis, int closings) {}

  ContactWear(List<OutputSetting> outputs, SwitchingLog switchings) {
    this.outputs = outputs.stream().filter(output -> output.contactLife() > 0).toList();
    this.switchings = switchings;
  }

  /** Counts what came since the last look. */
  void look(List<Recorded> journal) {
    if (outputs.isEmpty()) {
      return;
    }
    Set<Finding> worn = new HashSet<>();
    long newestMillis = switchings.newestMillis();
    for (OutputSetting output : outputs) {
      Count count = counted(output, triedMillis(output, journal), newestMillis);
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

  private Count counted(OutputSetting output, long triedMillis, long toMillis) {
    Count before = counts.get(output.name());
    if (before == null || before.triedMillis != triedMillis) {
      before = new Count(triedMillis, triedMillis, 0);
    }
    int since = switchings.closings(output.room(), output.name(), before.upToMillis, toMillis);
    return new Count(triedMillis, Math.max(before.upToMillis, toMillis), before.closings + since);
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
