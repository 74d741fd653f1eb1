package rindward.controller.task;

import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Knows every task that runs by itself, so that alarms, metrics and the page can ask whether one
 * has stopped. For any thread.
 */
public final class TaskSupervisor {
  private final Supplier<Instant> wall;
  private final LongSupplier nanos;
  private final Wrapper wrapper;
  private final List<SupervisedTask> tasks = new CopyOnWriteArrayList<>();

  /** Stands around each turn of each task; a test breaks tasks by it. */
  @FunctionalInterface
  public interface Wrapper {
    /** Returns what is done in the turn instead. */
    Work around(String task, Work work);
  }

  /**
   * @param wall tells people when a task last succeeded
   * @param nanos the machine's monotonic clock
   */
  public TaskSupervisor(Supplier<Instant> wall, LongSupplier nanos) {
    this(wall, nanos, (task, work) -> work);
  }

  /** The same with something around each turn. */
  public TaskSupervisor(Supplier<Instant> wall, LongSupplier nanos, Wrapper wrapper) {
    this.wall = wall;
    this.nanos = nanos;
    this.wrapper = wrapper;
  }

  /** Takes a task under its supervision; nothing runs yet. */
  public SupervisedTask task(String name, Cadence cadence) {
    SupervisedTask task = new SupervisedTask(this, name, cadence);
    tasks.add(task);
    return task;
  }

  /** Returns every task, in the order in which they came under supervision. */
  public List<SupervisedTask> tasks() {
    return List.copyOf(tasks);
  }

  /** Tells whether a task has gone without success for longer than it may. */
  public boolean isOverdue(SupervisedTask task) {
    return task.health().isOverdue(nanos());
  }

  /** Returns how every task is doing, in the same order. */
  public List<TaskHealth> health() {
    return tasks.stream().map(SupervisedTask::health).toList();
  }

  /** Returns the same as others are told. */
  public List<TaskState> states() {
    long now = nanos();
    return health().stream().map(health -> TaskState.of(health, now)).toList();
  }

  /** Returns how those are doing that have gone without success for longer than they may. */
  public List<TaskHealth> overdue() {
    long now = nanos();
    return health().stream().filter(health -> health.isOverdue(now)).toList();
  }

  Instant wall() {
    return wall.get();
  }

  long nanos() {
    return nanos.getAsLong();
  }

  Work around(String task, Work work) {
    return wrapper.around(task, work);
  }
}
