package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Instant;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;

/** Binds every task that runs by itself. Tags are bounded: names of tasks, buses and channels. */
final class TaskMetrics implements MeterBinder {
  private final TaskSupervisor tasks;

  TaskMetrics(TaskSupervisor tasks) {
    this.tasks = tasks;
  }

  @Override
  public void bindTo(MeterRegistry registry) {
    for (SupervisedTask task : tasks.tasks()) {
      String name = task.health().task();
      Gauge.builder("rindward.task.last.success.timestamp", () -> lastSuccess(task))
          .description("when the task last succeeded, Unix time; NaN if it never has")
          .baseUnit("seconds")
          .tag("task", name)
          .register(registry);
      Gauge.builder("rindward.task.overdue", () -> tasks.isOverdue(task) ? 1 : 0)
          .description("1 while the task has gone without success for longer than it may")
          .tag("task", name)
          .register(registry);
      FunctionCounter.builder("rindward.task.failures", task, t -> t.health().failures())
          .description("how often the task has failed since the start")
          .tag("task", name)
          .register(registry);
    }
  }

  private static double lastSuccess(SupervisedTask task) {
    Instant last = task.health().lastSuccess();
    return last == null ? Double.NaN : last.toEpochMilli() / 1000.0;
  }
}
