package rindward.controller.daemon;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.notice.LivenessPing;
import rindward.controller.settings.Calls;
import rindward.controller.task.Cadence;
import rindward.controller.task.SupervisedTask;
import rindward.controller.task.TaskSupervisor;
import rindward.controller.task.TaskThreads;

/**
 * Gives a sign of life as long as the rooms are looked at. A board that hangs, or has lost its
 * power or its network, gives none, and whoever waits for it raises the alarm.
 */
final class LivenessSender {
  /** A tick older than this is no sign of life. */
  private static final Duration FRESH = Duration.ofMinutes(2);

  private static final Duration FIRST = Duration.ofSeconds(5);
  private static final String TASK = "sign-of-life";

  private final LivenessPing sign;
  private final Time time;
  private final SupervisedTask giving;

  private LivenessSender(LivenessPing sign, Duration every, Time time, TaskSupervisor tasks) {
    this.sign = sign;
    this.time = time;
    this.giving = tasks.task(TASK, Cadence.every(every).startingAfter(FIRST));
  }

  /**
   * Prepares them; null where the settings name nobody.
   *
   * @throws IOException in one sentence, when the address cannot be read
   */
  static @Nullable LivenessSender open(Calls calls, Time time, TaskSupervisor tasks)
      throws IOException {
    Calls.Alive alive = calls.alive();
    return alive == null
        ? null
        : new LivenessSender(
            new LivenessPing(alive.address().open(System::getenv)), alive.every(), time, tasks);
  }

  /** Returns why the last sign was not taken, in one sentence; empty when all is well. */
  String trouble() {
    return sign.trouble();
  }

  /** Begins to give them. */
  void start(TaskThreads threads, Supplier<@Nullable ShedSnapshot> latest) {
    giving.start(threads.named(TASK), () -> give(latest.get()));
  }

  private void give(@Nullable ShedSnapshot snapshot) {
    Instant now = time.now().at();
    if (snapshot != null && snapshot.at().plus(FRESH).isAfter(now)) {
      sign.give();
    }
  }
}
