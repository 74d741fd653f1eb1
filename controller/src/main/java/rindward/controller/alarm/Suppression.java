package rindward.controller.alarm;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which alarms are hidden by design in one tick: those whose cause has called already, and those
 * that the grower has accepted. One fault, one call.
 */
final class Suppression {
  private final List<AlarmId> roots;
  private final Map<String, Set<AlarmKind>> accepted;
  private final AlarmTable table;

  private Suppression(List<AlarmId> roots, Map<String, Set<AlarmKind>> accepted, AlarmTable table) {
    this.roots = roots;
    this.accepted = accepted;
    this.table = table;
  }

  /**
   * A root hides what follows from it for as long as its condition lasts, and until it is reset
   * where it latches, acknowledged, shelved or hidden itself; not while it is out of service, when
   * nobody knows what it says.
   */
  static Suppression of(Map<AlarmId, Alarm> alarms, ShedFacts facts, AlarmTable table) {
    return new Suppression(
        alarms.entrySet().stream()
            .filter(e -> e.getValue().lasts() && !e.getValue().isOutOfService())
            .map(Map.Entry::getKey)
            .filter(id -> !table.row(id.kind()).suppresses().isEmpty())
            .toList(),
        facts.rooms().stream().collect(Collectors.toMap(RoomFacts::room, RoomFacts::accepted)),
        table);
  }

  /** Tells whether an alarm is hidden. */
  boolean hides(AlarmId id) {
    return accepted.getOrDefault(id.room(), Set.of()).contains(id.kind())
        || roots.stream().anyMatch(root -> isCauseOf(root, id));
  }

  private boolean isCauseOf(AlarmId root, AlarmId id) {
    return id.touches(root) && table.row(root.kind()).suppresses().contains(id.kind());
  }
}
