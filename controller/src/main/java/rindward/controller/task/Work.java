package rindward.controller.task;

/** What a task does in one turn. Whatever it throws is the supervisor's to count and to tell. */
@FunctionalInterface
public interface Work {
  /** Does it once. */
  void run() throws Exception;
}
