package rindward.controller.daemon;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.store.StoreException;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.StoreHealth;
import rindward.controller.task.TaskHealth;

/**
 * How the program itself is doing, as findings: settings, store, disk, clock, a power cut, channels
 * and tasks that fail. {@link #look} reads the disk and is for one thread; the findings are for
 * any.
 */
final class Upkeep {
  /** The kind of event that tells when the program began and ended. */
  static final String KIND = "program";

  static final String STARTED = "started";
  static final String STOPPED = "stopped";

  /** Less than that is nearly full: a season of two rooms needs a tenth of it. */
  private static final long LEAST_FREE_BYTES = 200_000_000;

  /** A restart takes less. */
  private static final Duration LONGEST_PAUSE = Duration.ofMinutes(10);

  private final Path store;
  private final SampleLog samples;
  private final Supplier<Map<String, String>> channelTroubles;
  private final Supplier<List<TaskHealth>> overdue;
  private final Supplier<Instant> now;
  private final Instant lastKept;
  private final Set<Finding> atStart = ConcurrentHashMap.newKeySet();
  private volatile boolean isNearlyFull;
  private volatile boolean wasAway;

  /**
   * @param past what the store knew at the start
   * @param channelTroubles what is wrong with each channel, by name; empty sentences for none
   * @param overdue the tasks that have gone without success for too long
   */
  Upkeep(
      Path store,
      SampleLog samples,
      RestoredState past,
      Supplier<Map<String, String>> channelTroubles,
      Supplier<List<TaskHealth>> overdue,
      Supplier<Instant> now) {
    this.store = store;
    this.samples = samples;
    this.channelTroubles = channelTroubles;
    this.overdue = overdue;
    this.now = now;
    this.lastKept = past.lastKept();
    this.wasAway =
        past.last()
                .filter(event -> !(event.kind().equals(KIND) && event.text().equals(STOPPED)))
                .isPresent()
            && now.get().isAfter(lastKept.plus(LONGEST_PAUSE));
  }

  /** Adds what was found at the start, and lasts until the next one. */
  void tell(Finding found) {
    atStart.add(found);
  }

  /** Looks at the disk. */
  void look() {
    try {
      isNearlyFull = Files.getFileStore(store).getUsableSpace() < LEAST_FREE_BYTES;
    } catch (IOException e) {
      // The store says itself when it cannot be reached.
      isNearlyFull = false;
    }
  }

  /** Returns what is so at present, the caller's to add to; a power cut is told once. */
  Set<Finding> findings() {
    Set<Finding> found = new HashSet<>(atStart);
    if (wasAway) {
      wasAway = false;
      found.add(new Finding(AlarmKind.POWER_GAP, ""));
    }
    if (isNearlyFull) {
      found.add(new Finding(AlarmKind.DISK_NEARLY_FULL, ""));
    }
    StoreHealth health = samples.health();
    if (!health.isKeeping()) {
      found.add(new Finding(AlarmKind.STORE_DAMAGED, ""));
    }
    if (health.copyTrouble() != null) {
      found.add(new Finding(AlarmKind.BACKUP_FAILING, ""));
    }
    if (health.elsewhereTrouble() != null) {
      found.add(new Finding(AlarmKind.NO_COPY_ELSEWHERE, ""));
    }
    if (now.get().isBefore(lastKept)) {
      found.add(new Finding(AlarmKind.CLOCK_NOT_TRUSTED, ""));
    }
    channelTroubles
        .get()
        .forEach(
            (channel, trouble) -> {
              if (!trouble.isEmpty()) {
                found.add(new Finding(AlarmKind.CHANNEL_FAILING, channel));
              }
            });
    overdue.get().stream()
        .filter(task -> !isToldAlready(task, health))
        .forEach(task -> found.add(new Finding(AlarmKind.TASK_FAILING, task.task())));
    return found;
  }

  /** One fault, one call: what the store cannot do is said of the store, and of its copies. */
  private static boolean isToldAlready(TaskHealth task, StoreHealth store) {
    if (task.task().equals(NightlyBackup.TASK)) {
      return store.copyTrouble() != null;
    }
    return task.task().equals(CopyElsewhere.TASK)
        ? store.elsewhereTrouble() != null
        : task.cause() instanceof StoreException && !store.isKeeping();
  }
}
