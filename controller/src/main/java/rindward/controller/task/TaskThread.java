package rindward.controller.task;

import java.time.Duration;

/** Where the turns of tasks are taken, one after the other; a test moves its time by hand. */
@FunctionalInterface
public interface TaskThread {
  /** Takes a turn after a pause; does nothing once the program ends. */
  void after(Duration pause, Runnable turn);
}
