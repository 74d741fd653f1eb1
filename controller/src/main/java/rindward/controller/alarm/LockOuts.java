package rindward.controller.alarm;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Which heaters were seen not to stop and by which code each is released: a lock-out is lifted on
 * the spot, not from afar. Changed on the control thread; read from any.
 */
public final class LockOuts {
  private final Supplier<String> codes;
  private volatile Map<AlarmId, LockOut> all;

  /**
   * @param kept those that were not lifted before the last end
   * @param codes draws six figures that nobody can foresee
   */
  public LockOuts(Map<AlarmId, LockOut> kept, Supplier<String> codes) {
    this.all = Map.copyOf(kept);
    this.codes = codes;
  }

  /** Tells whether answering an alarm of this kind can release heat. */
  public static boolean isAbout(AlarmId id) {
    return id.kind() == AlarmKind.HEATER_RUNAWAY;
  }

  /** Returns all that stand. */
  public Map<AlarmId, LockOut> all() {
    return all;
  }

  /** Locks out, for every heater that goes on and is not locked out yet. */
  void lock(Alarms alarms, Instant now) {
    alarms
        .all()
        .forEach(
            (id, alarm) -> {
              if (isAbout(id) && alarm.lasts() && !alarm.isOutOfService()) {
                put(id, all.getOrDefault(id, new LockOut(codes.get(), now, 0)));
              }
            });
  }

  /** Tells whether an answer may release this one; a wrong code is counted. */
  boolean opens(AlarmId id, @Nullable String given) {
    LockOut lock = all.get(id);
    if (lock == null || (given != null && lock.opensBy(given))) {
      return true;
    }
    if (given != null) {
      int wrong = lock.wrong() + 1;
      put(
          id,
          wrong < LockOut.MOST_WRONG
              ? new LockOut(lock.code(), lock.since(), wrong)
              : new LockOut(codes.get(), lock.since(), 0));
    }
    return false;
  }

  /** Lifts one. */
  void lift(AlarmId id) {
    Map<AlarmId, LockOut> next = new HashMap<>(all);
    next.remove(id);
    all = Map.copyOf(next);
  }

  /**
   * Returns the alarms with one latched for each lock-out that they have forgotten, as those of a
   * new or an older record have.
   */
  Alarms remembered(Alarms alarms) {
    Map<AlarmId, Alarm> next = new HashMap<>(alarms.all());
    all.forEach(
        (id, lock) ->
            next.merge(id, Alarm.latched(lock.since()), (now, ours) -> now.lasts() ? now : ours));
    return new Alarms(next, alarms.workUntilSeconds(), alarms.changes());
  }

  private void put(AlarmId id, LockOut lock) {
    if (!lock.equals(all.get(id))) {
      Map<AlarmId, LockOut> next = new HashMap<>(all);
      next.put(id, lock);
      all = Map.copyOf(next);
    }
  }
}
