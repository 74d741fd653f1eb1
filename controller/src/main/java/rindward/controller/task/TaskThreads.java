package rindward.controller.task;

/** Gives tasks the threads on which they take their turns, each to be asked for once. */
@FunctionalInterface
public interface TaskThreads {
  /** Returns a new thread of that name. */
  TaskThread named(String name);
}
