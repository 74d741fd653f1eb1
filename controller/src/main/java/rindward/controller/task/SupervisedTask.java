package rindward.controller.task;

import java.time.Duration;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * One task that runs by itself. Whatever it throws, an {@link Error} too, ends that turn and
 * nothing else: it is told in the log once, with its cause, counted, and tried again. For any
 * thread; turns of one task do not overlap unless its callers do.
 */
public final class SupervisedTask {
  private static final Logger LOG = LoggerFactory.getLogger(SupervisedTask.class);

  private final TaskSupervisor supervisor;
  private volatile TaskHealth health;
  private volatile boolean isStarted;

  SupervisedTask(TaskSupervisor supervisor, String name, Cadence cadence) {
    this.supervisor = supervisor;
    this.health = TaskHealth.unasked(name, cadence);
  }

  /** Returns how it is doing. */
  public TaskHealth health() {
    return health;
  }

  /** Takes its turns on a thread until the program ends; what is done once, until it succeeds. */
  public void start(TaskThread thread, Work work) {
    start(thread, work, health().cadence()::every);
  }

  /** The same, with another pause after a success than the usual one. */
  public void start(TaskThread thread, Work work, Supplier<Duration> pause) {
    isStarted = true;
    update(known -> known.owed(supervisor.nanos()));
    thread.after(health().cadence().first(), () -> turn(thread, work, pause));
  }

  /**
   * Does it once, here and now, and throws nothing.
   *
   * @return whether it succeeded
   */
  public boolean run(Work work) {
    update(known -> known.owed(supervisor.nanos()));
    try {
      supervisor.around(health().task(), work).run();
    } catch (InterruptedException e) { // Only the end of the program interrupts.
      Thread.currentThread().interrupt();
      return false;
    } catch (Throwable e) {
      failed(e);
      return false;
    }
    succeeded();
    return true;
  }

  private void turn(TaskThread thread, Work work, Supplier<Duration> pause) {
    boolean hasSucceeded = false;
    try {
      hasSucceeded = run(work);
    } finally { // Even if there is no memory to tell of a failure.
      if (!hasSucceeded) {
        thread.after(health().retry(), () -> turn(thread, work, pause));
      } else if (isRepeated()) {
        thread.after(pause.get(), () -> turn(thread, work, pause));
      }
    }
  }

  private boolean isRepeated() {
    return !health().cadence().every().isZero();
  }

  private void succeeded() {
    TaskHealth before = health();
    update(
        known -> {
          TaskHealth next = known.succeeded(supervisor.wall());
          return isStarted && isRepeated() ? next.owed(supervisor.nanos()) : next;
        });
    if (before.failuresInARow() > 0) {
      LOG.info("Task {} succeeds again, after {} failures", before.task(), before.failuresInARow());
    }
  }

  private void failed(Throwable why) {
    TaskHealth before = health();
    update(known -> known.failed(why));
    if (!before.isKnown(why)) {
      LOG.error("Task {} failed, and is tried again", before.task(), why);
    }
  }

  private synchronized void update(UnaryOperator<TaskHealth> step) {
    health = step.apply(health);
  }
}
