package rindward.controller.alarm;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Every alarm that is or lately was something, and what the last step changed. Immutable: a tick
 * and a person's word each give the next one. Times are seconds of the monotonic clock.
 *
 * @param all by what they are about; an alarm that is not here is {@link Alarm#NEVER}
 * @param workUntilSeconds rooms in which somebody works, and until when
 * @param changes what the last step changed, to be noted and, where it is a call, sent
 */
public record Alarms(
    Map<AlarmId, Alarm> all, Map<String, Long> workUntilSeconds, List<AlarmChange> changes) {

  /** All is well. */
  public static final Alarms NONE = new Alarms(Map.of(), Map.of(), List.of());

  public Alarms {
    all = Collections.unmodifiableMap(all);
    workUntilSeconds = Map.copyOf(workUntilSeconds);
    changes = List.copyOf(changes);
  }

  /** Returns one alarm. */
  public Alarm alarm(AlarmId id) {
    return all.getOrDefault(id, Alarm.NEVER);
  }

  /** Returns what follows from a tick. */
  public Alarms after(ShedFacts facts, AlarmTable table, long nowSeconds) {
    Map<AlarmId, Condition> conditions = Conditions.of(facts, table);
    if (all.isEmpty()
        && workUntilSeconds.isEmpty()
        && !conditions.containsValue(Condition.PRESENT)) {
      return NONE;
    }
    Map<AlarmId, Alarm> sensed = sensed(conditions, table, nowSeconds);
    Suppression suppression = Suppression.of(sensed, facts, table);
    Map<AlarmId, Alarm> next = new HashMap<>();
    List<AlarmChange> noted = new ArrayList<>(0);
    sensed.forEach(
        (id, alarm) -> {
          // Where nothing is, there is nothing to hide, and nothing to note in every tick.
          boolean isHidden = !alarm.isQuiet() && suppression.hides(id);
          Alarm untold = alarm.suppressed(isHidden, nowSeconds);
          Alarm told = untold.announced();
          note(id, told, told != untold, noted);
          if (!told.isForgettable()) {
            next.put(id, told);
          }
        });
    Map<String, Long> work = new HashMap<>(workUntilSeconds);
    work.values().removeIf(until -> until <= nowSeconds);
    return new Alarms(next, work, noted);
  }

  /** Returns the alarms with one acknowledged: there will be no further word of this occurrence. */
  public Alarms acknowledge(AlarmId id) {
    return changing(id, Alarm::acknowledged);
  }

  /** Returns the alarms with a latched one reset. */
  public Alarms reset(AlarmId id) {
    return changing(id, Alarm::reset);
  }

  /** Returns the alarms with one on the shelf until a time, at most a day away. */
  public Alarms shelve(AlarmId id, long untilSeconds, long nowSeconds) {
    return changing(id, alarm -> alarm.shelved(untilSeconds, nowSeconds));
  }

  /** Returns the alarms with one taken off the shelf before its time. */
  public Alarms unshelve(AlarmId id) {
    return changing(id, Alarm::unshelved);
  }

  /** Returns the alarms with one taken out of service for repair, or put back. */
  public Alarms outOfService(AlarmId id, boolean isOut) {
    return changing(id, alarm -> alarm.outOfService(isOut));
  }

  /**
   * Returns the alarms with somebody at work in a room: what an open door and a person do to it is
   * shelved until a time, at most a day away.
   */
  public Alarms workingIn(String room, long untilSeconds, long nowSeconds) {
    Map<String, Long> work = new HashMap<>(workUntilSeconds);
    work.put(room, Math.min(untilSeconds, nowSeconds + Alarm.LONGEST_SHELF_SECONDS));
    return new Alarms(all, work, List.of());
  }

  /**
   * Returns the same alarms on another monotonic clock, so that a restart forgets no
   * acknowledgement, ends no shelf late and calls nobody twice.
   *
   * @param shiftSeconds what the new clock shows less what the old one would have shown by now
   */
  public Alarms onClock(long shiftSeconds) {
    Map<AlarmId, Alarm> moved = new HashMap<>(all);
    moved.replaceAll((id, alarm) -> alarm.onClock(shiftSeconds));
    Map<String, Long> work = new HashMap<>(workUntilSeconds);
    work.replaceAll((room, until) -> until + shiftSeconds);
    return new Alarms(moved, work, List.of());
  }

  private Map<AlarmId, Alarm> sensed(
      Map<AlarmId, Condition> conditions, AlarmTable table, long nowSeconds) {
    Map<AlarmId, Alarm> sensed = new HashMap<>(all);
    conditions.forEach(
        (id, seen) -> {
          if (seen
              == Condition.PRESENT) { // What cannot be decided leaves an alarm as it was: quiet.
            sensed.putIfAbsent(id, Alarm.NEVER);
          }
        });
    sensed.replaceAll(
        (id, alarm) -> {
          AlarmRow row = table.row(id.kind());
          Condition seen = conditions.getOrDefault(id, Condition.ABSENT);
          Alarm now = alarm.unshelvedInTime(nowSeconds).sensing(seen, row, nowSeconds);
          long workUntil = workUntilSeconds.getOrDefault(id.room(), Alarm.NOT_SHELVED);
          boolean isWork = row.isQuietDuringWork() && workUntil > nowSeconds;
          return isWork && !now.isForgettable() ? now.shelved(workUntil, nowSeconds) : now;
        });
    return sensed;
  }

  private Alarms changing(AlarmId id, UnaryOperator<Alarm> change) {
    Alarm changed = change.apply(alarm(id));
    Map<AlarmId, Alarm> next = new HashMap<>(all);
    next.put(id, changed);
    List<AlarmChange> noted = new ArrayList<>(1);
    note(id, changed, false, noted);
    return new Alarms(next, workUntilSeconds, noted);
  }

  private void note(AlarmId id, Alarm now, boolean isCall, List<AlarmChange> noted) {
    Alarm before = alarm(id);
    boolean isOver =
        before.isAnnounced() && before.condition().active() && !now.condition().active();
    AlarmChange change = new AlarmChange(id, before.state(), now.state(), isCall, isOver);
    if (change.isSomething()) {
      noted.add(change);
    }
  }
}
