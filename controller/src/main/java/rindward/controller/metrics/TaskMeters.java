package rindward.controller.metrics;

import io.micrometer.core.instrument.FunctionCounter;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import rindward.controller.link.ControlReport;
import rindward.controller.link.ControlView;
import rindward.controller.task.TaskState;

/**
 * Counts each task that runs by itself, in control and here, from the first time that it is told
 * of. Tags are bounded: names of tasks, buses and channels.
 */
final class TaskMeters {
  private final MeterRegistry registry;
  private final ControlView control;
  private final Supplier<List<TaskState>> ownTasks;
  private final Set<String> bound = new HashSet<>();

  TaskMeters(MeterRegistry registry, ControlView control, Supplier<List<TaskState>> ownTasks) {
    this.registry = registry;
    this.control = control;
    this.ownTasks = ownTasks;
  }

  /** Looks for tasks that were not told of before. */
  synchronized void look() {
    told().stream().map(TaskState::task).filter(bound::add).forEach(this::bind);
  }

  private void bind(String name) {
    Gauge.builder(
            "rindward.task.last.success.timestamp",
            () -> of(name, TaskMeters::lastSuccess, Double.NaN))
        .description("when the task last succeeded, Unix time; NaN if it never has")
        .baseUnit("seconds")
        .tag("task", name)
        .register(registry);
    Gauge.builder("rindward.task.overdue", () -> of(name, task -> task.isOverdue() ? 1 : 0, 0))
        .description("1 while the task has gone without success for longer than it may")
        .tag("task", name)
        .register(registry);
    FunctionCounter.builder(
            "rindward.task.failures", this, own -> own.of(name, TaskState::failures, 0))
        .description("how often the task has failed since the start")
        .tag("task", name)
        .register(registry);
  }

  private double of(String name, ToDoubleFunction<TaskState> value, double otherwise) {
    return told().stream()
        .filter(task -> task.task().equals(name))
        .mapToDouble(value)
        .findFirst()
        .orElse(otherwise);
  }

  private List<TaskState> told() {
    ControlReport report = control.latest();
    List<TaskState> all = new ArrayList<>(report == null ? List.of() : report.tasks());
    all.addAll(ownTasks.get());
    return all;
  }

  private static double lastSuccess(TaskState task) {
    Instant last = task.lastSuccess();
    return last == null ? Double.NaN : last.toEpochMilli() / 1000.0;
  }
}
