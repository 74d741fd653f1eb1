package rindward.controller.task;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How one task is doing: what the supervisor knows of it, and nothing of threads. Each turn gives
 * the next one.
 *
 * @param task its name, the same in logs, alarms and metrics
 * @param cadence how often it should succeed
 * @param owedSinceNanos monotonic time since which a success is owed; null while none is
 * @param lastSuccess when it last succeeded, for people; null if it never has
 * @param failures how often it has failed since the start
 * @param failuresInARow how often it has failed since it last succeeded
 * @param cause what it threw last; null once it has succeeded since
 */
public record TaskHealth(
    String task,
    Cadence cadence,
    @Nullable Long owedSinceNanos,
    @Nullable Instant lastSuccess,
    long failures,
    int failuresInARow,
    @Nullable Throwable cause) {

  /** Returns the health of a task that nobody has asked for yet. */
  static TaskHealth unasked(String task, Cadence cadence) {
    return new TaskHealth(task, cadence, null, null, 0, 0, null);
  }

  /** Returns what follows when a success is owed from now on, if none is owed already. */
  TaskHealth owed(long nowNanos) {
    return owedSinceNanos != null
        ? this
        : new TaskHealth(task, cadence, nowNanos, lastSuccess, failures, failuresInARow, cause);
  }

  /** Returns what follows from a success. */
  TaskHealth succeeded(Instant at) {
    return new TaskHealth(task, cadence, null, at, failures, 0, null);
  }

  /** Returns what follows from a failure; the success is still owed. */
  TaskHealth failed(Throwable why) {
    return new TaskHealth(
        task, cadence, owedSinceNanos, lastSuccess, failures + 1, failuresInARow + 1, why);
  }

  /** Returns the pause before it is tried again. */
  Duration retry() {
    return cadence.retryAfter(failuresInARow);
  }

  /** Tells whether a failure is told of already: the same kind, thrown at the same place. */
  boolean isKnown(Throwable why) {
    return cause != null && origin(cause).equals(origin(why));
  }

  /** Tells whether it has gone without success for longer than it may. */
  public boolean isOverdue(long nowNanos) {
    return owedSinceNanos != null && nowNanos - owedSinceNanos > cadence.overdueAfter().toNanos();
  }

  /**
   * Returns why it failed last, in one sentence; empty when it did not, or has said nothing yet.
   */
  public String trouble() {
    if (cause == null) {
      return "";
    }
    String said = cause.getMessage();
    String kind = cause.getClass().getSimpleName();
    return cause instanceof Error || said == null ? kind + (said == null ? "" : ": " + said) : said;
  }

  private static String origin(Throwable why) {
    StackTraceElement[] places = why.getStackTrace();
    return why.getClass().getName() + (places.length == 0 ? "" : " " + places[0]);
  }
}
