package rindward.controller.link;

import java.util.List;
import java.util.Set;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Tick;
import rindward.controller.room.ProbePlace;
import rindward.controller.room.ProbeReading;
import rindward.controller.store.samples.StoreHealth;
import rindward.controller.task.TaskState;

/**
 * All that control tells of itself after a tick: what a page shows that no record holds. Immutable.
 *
 * @param told when it was told, by control's clocks
 * @param heard number of the last entry of the journal that control had heard by then; 0 for none
 * @param snapshot the shed after the last tick
 * @param probes the latest of every probe of the settings
 * @param accepted what the grower has accepted as the best that can be had
 * @param store whether what is measured reaches the disk
 * @param rewrites how often finished days were rewritten on the disk; what was read of them before
 *     the last time is void
 * @param channels every way by which the shed reaches somebody
 * @param tasks everything that runs by itself beside the control
 */
public record ControlReport(
    Tick told,
    long heard,
    ShedSnapshot snapshot,
    List<ProbeReading> probes,
    Set<AlarmId> accepted,
    StoreHealth store,
    long rewrites,
    List<ChannelState> channels,
    List<TaskState> tasks) {

  public ControlReport {
    probes = List.copyOf(probes);
    accepted = Set.copyOf(accepted);
    channels = List.copyOf(channels);
    tasks = List.copyOf(tasks);
  }

  /** Returns the latest of a probe; one that is not known has never said anything. */
  public ProbeReading reading(String probe) {
    return probes.stream()
        .filter(known -> known.probe().equals(probe))
        .findFirst()
        .orElseGet(() -> new ProbeReading(probe, ProbePlace.AIR, null, 0, null));
  }

  /**
   * Returns the same by another monotonic clock.
   *
   * @param nowNanos what that clock shows at the moment of telling
   */
  public ControlReport onClock(long nowNanos) {
    long shift = nowNanos - told.nanos();
    return new ControlReport(
        new Tick(told.at(), nowNanos),
        heard,
        snapshot,
        probes.stream().map(probe -> probe.onClock(shift)).toList(),
        accepted,
        store,
        rewrites,
        channels,
        tasks);
  }
}
