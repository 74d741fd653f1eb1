package rindward.controller.alarm;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import rindward.controller.crop.Limits;
import rindward.hardware.Thousandths;

/** Judges one tick: which alarms' conditions hold. Knows limits and deadbands, no time. */
final class Conditions {
  private final AlarmTable table;
  private final Map<AlarmId, Condition> all = new HashMap<>();

  private Conditions(AlarmTable table) {
    this.table = table;
  }

  /** Returns every condition that is there or cannot be decided; all others are absent. */
  static Map<AlarmId, Condition> of(ShedFacts facts, AlarmTable table) {
    Conditions conditions = new Conditions(table);
    for (RoomFacts room : facts.rooms()) {
      conditions.judge(room);
      conditions.put(room, AlarmKind.UNHELD_IN_COLD, unheld(room));
      room.findings().forEach(found -> conditions.found(room.room(), inWeather(found, room)));
    }
    facts.findings().forEach(found -> conditions.found("", found));
    conditions.put(AlarmId.ofShed(AlarmKind.UNHELD_IN_COLD), unheld(facts));
    return conditions.all;
  }

  private void judge(RoomFacts room) {
    Limits warmth = room.wanted().temperature();
    Limits damp = room.wanted().humidity();
    put(room, AlarmKind.CHILLING, chilling(room));
    below(room, AlarmKind.NEAR_FREEZING, room.stockMilliC(), room.frostMilliC());
    below(room, AlarmKind.COLD_AIR, room.coldestMilliC(), warmth.low());
    above(room, AlarmKind.TOO_WARM, room.warmestMilliC(), warmth.high());
    above(room, AlarmKind.HIGH_LIMIT, room.warmestMilliC(), room.highLimitMilliC());
    above(room, AlarmKind.TOO_DAMP, room.humidityMilliPct(), damp.high());
    below(room, AlarmKind.TOO_DRY, room.humidityMilliPct(), damp.low());
    put(room, AlarmKind.CONDENSATION, condensation(room));
  }

  /**
   * Fruit follows the air. So fruit below its threshold in air above it is on its way back, and
   * cold air over warm fruit is a dip: only both together stay.
   */
  private Condition chilling(RoomFacts room) {
    if (room.minutesToChilling() != RoomFacts.NOT_FORECAST) {
      return Condition.PRESENT;
    }
    if (room.chillingMilliC() == Thousandths.NONE) {
      return Condition.ABSENT;
    }
    if (room.fruitMilliC() == Thousandths.NONE || room.coldestMilliC() == Thousandths.NONE) {
      return Condition.UNDECIDED;
    }
    return Condition.below(
        Math.max(room.fruitMilliC(), room.coldestMilliC()),
        room.chillingMilliC(),
        table.row(AlarmKind.CHILLING).deadband());
  }

  private Condition condensation(RoomFacts room) {
    return room.freezingMilliC() == Thousandths.NONE
        ? Condition.ABSENT
        : Condition.above(
            room.dewPointMilliC(),
            room.fruitMilliC(),
            table.row(AlarmKind.CONDENSATION).deadband());
  }

  /**
   * A room that nothing holds has lost its probes, or the board that switches its outputs; in the
   * cold that cannot wait until morning.
   */
  private static Condition unheld(RoomFacts room) {
    boolean isUnheld =
        room.coldestMilliC() == Thousandths.NONE || finds(room.findings(), AlarmKind.BOARD_LOST);
    return Condition.of(room.isColdOutside() && isUnheld);
  }

  /** A lost board is one fault, however many rooms it holds. */
  private static Condition unheld(ShedFacts shed) {
    return Condition.of(
        finds(shed.findings(), AlarmKind.BOARD_LOST)
            && shed.rooms().stream().anyMatch(RoomFacts::isColdOutside));
  }

  private static boolean finds(Set<Finding> findings, AlarmKind kind) {
    return findings.stream().anyMatch(found -> found.kind() == kind);
  }

  /** A dead heater wakes nobody while the room does not need it. */
  private static Finding inWeather(Finding found, RoomFacts room) {
    return found.kind() == AlarmKind.HEATER_WITHOUT_EFFECT && !room.isColdOutside()
        ? new Finding(AlarmKind.OUTPUT_WITHOUT_EFFECT, found.thing())
        : found;
  }

  private void above(RoomFacts room, AlarmKind kind, int value, int limit) {
    put(room, kind, Condition.above(value, limit, table.row(kind).deadband()));
  }

  private void below(RoomFacts room, AlarmKind kind, int value, int limit) {
    put(room, kind, Condition.below(value, limit, table.row(kind).deadband()));
  }

  private void found(String room, Finding found) {
    all.put(new AlarmId(found.kind(), room, found.thing()), Condition.PRESENT);
  }

  private void put(RoomFacts room, AlarmKind kind, Condition condition) {
    put(AlarmId.of(kind, room.room()), condition);
  }

  /** What is absent need not be said, and mostly everything is. */
  private void put(AlarmId id, Condition condition) {
    if (condition != Condition.ABSENT) {
      all.put(id, condition);
    }
  }
}
