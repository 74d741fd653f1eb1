package rindward.controller.task;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How one task is doing, as others are told: a page in another process, and whoever counts.
 *
 * @param task its name
 * @param isOverdue whether it has gone without success for longer than it may
 * @param lastSuccess when it last succeeded; null if it never has
 * @param failures how often it has failed since the start
 * @param failuresInARow how often it has failed since it last succeeded
 * @param trouble why it failed last, in one sentence; empty when it did not
 */
public record TaskState(
    String task,
    boolean isOverdue,
    @Nullable Instant lastSuccess,
    long failures,
    int failuresInARow,
    String trouble) {

  static TaskState of(TaskHealth health, long nowNanos) {
    return new TaskState(
        health.task(),
        health.isOverdue(nowNanos),
        health.lastSuccess(),
        health.failures(),
        health.failuresInARow(),
        health.trouble());
  }
}
