package rindward.controller.link;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.control.Tick;
import rindward.controller.room.ProbeReading;
import rindward.controller.store.samples.StoreHealth;
import rindward.controller.task.TaskState;

/**
 * Control as a test wants it: it tells what it was told to tell, and counts who asks it to look.
 */
public final class StoodStillControl implements ControlView {
  public @Nullable ControlReport report;
  public @Nullable String silence;
  public int looks;

  /** Returns a report of which a test needs no more than this. */
  public static ControlReport report(
      ShedSnapshot snapshot,
      Tick now,
      long heard,
      List<ProbeReading> probes,
      List<TaskState> tasks) {
    return new ControlReport(
        now,
        heard,
        snapshot,
        probes,
        Set.of(),
        new StoreHealth(0, 0, null, null, null, null, null),
        0,
        List.of(),
        tasks);
  }

  /** The same of a shed without probes and tasks. */
  public static ControlReport report(ShedSnapshot snapshot, Instant at) {
    return report(snapshot, new Tick(at, 0), 0, List.of(), List.of());
  }

  @Override
  public @Nullable ControlReport latest() {
    return report;
  }

  @Override
  public @Nullable String silence() {
    return silence;
  }

  @Override
  public void lookAtJournal() {
    looks++;
  }

  @Override
  public void eachReport(Consumer<ControlReport> listener) {
    // It stands still.
  }
}
