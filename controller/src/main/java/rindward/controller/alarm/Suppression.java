package rindward.controller.alarm;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Which alarms are hidden by design in one tick: those whose cause has called already, and those
 * that the grower has accepted. One fault, one call.
 */
final class Suppression {
  private final List<AlarmId> roots;
  private final ShedFacts facts;
  private final AlarmTable table;

  private Suppression(List<AlarmId> roots, ShedFacts facts, AlarmTable table) {
    this.roots = roots;
    this.facts = facts;
    this.table = table;
  }

  /**
   * A root hides what follows from it for as long as its condition lasts, and until it is reset
   * where it latches, acknowledged, shelved or hidden itself; not while it is out of service, when
   * nobody knows what it says.
   */
  static Suppression of(Map<AlarmId, Alarm> alarms, ShedFacts facts, AlarmTable table) {
    List<AlarmId> roots = new ArrayList<>(0);
    alarms.forEach(
        (id, alarm) -> {
          if (alarm.lasts()
              && !alarm.isOutOfService()
              && !table.row(id.kind()).suppresses().isEmpty()) {
            roots.add(id);
          }
        });
    return new Suppression(roots, facts, table);
  }

  /** Tells whether an alarm is hidden. */
  boolean hides(AlarmId id) {
    for (RoomFacts room : facts.rooms()) {
      if (room.room().equals(id.room()) && room.accepted().contains(id.kind())) {
        return true;
      }
    }
    return roots.stream().anyMatch(root -> isCauseOf(root, id));
  }

  private boolean isCauseOf(AlarmId root, AlarmId id) {
    return id.touches(root) && table.row(root.kind()).suppresses().contains(id.kind());
  }
}
