package rindward.controller.task;

import java.time.Duration;

/**
 * How often a task is done, how soon again after a failure, and how long it may go without success
 * before somebody must know. All by the machine's monotonic clock.
 *
 * @param first the pause before the first turn
 * @param every the pause from the end of one turn to the next; zero for what is done once, and for
 *     what is done when others ask for it
 * @param firstRetry the pause after the first failure; it doubles with each further one
 * @param longestRetry the pause grows no longer than this
 * @param overdueAfter without success for longer than this the task is overdue
 */
public record Cadence(
    Duration first,
    Duration every,
    Duration firstRetry,
    Duration longestRetry,
    Duration overdueAfter) {
  private static final Duration SHORTEST_RETRY = Duration.ofSeconds(1);
  private static final Duration USUAL_FIRST_RETRY = Duration.ofSeconds(5);
  private static final Duration USUAL_LONGEST_RETRY = Duration.ofMinutes(1);
  private static final Duration USUAL_PATIENCE = Duration.ofMinutes(5);

  /** Often enough: the pause has long reached its longest by then. */
  private static final int MOST_DOUBLINGS = 16;

  /** Returns the cadence of a task that is done every so often, beginning now. */
  public static Cadence every(Duration every) {
    return new Cadence(
        Duration.ZERO,
        every,
        longer(SHORTEST_RETRY, shorter(every, USUAL_FIRST_RETRY)),
        longer(every, USUAL_LONGEST_RETRY),
        longer(every.multipliedBy(3), USUAL_PATIENCE));
  }

  /** Returns the cadence of a task that is done once, and again only until it has succeeded. */
  public static Cadence once() {
    return every(Duration.ZERO).retrying(USUAL_FIRST_RETRY, USUAL_LONGEST_RETRY);
  }

  /** Returns the cadence of a task that others ask for, and ask for again. */
  public static Cadence whenAsked() {
    return every(Duration.ZERO);
  }

  /** Returns the same, beginning later. */
  public Cadence startingAfter(Duration pause) {
    return new Cadence(pause, every, firstRetry, longestRetry, overdueAfter);
  }

  /** Returns the same with other pauses after failures. */
  public Cadence retrying(Duration firstPause, Duration longestPause) {
    return new Cadence(first, every, firstPause, longestPause, overdueAfter);
  }

  /** Returns the same with another time without success. */
  public Cadence overdueAfter(Duration patience) {
    return new Cadence(first, every, firstRetry, longestRetry, patience);
  }

  /** Returns the pause before the next try. */
  public Duration retryAfter(int failuresInARow) {
    int doublings = Math.min(Math.max(failuresInARow - 1, 0), MOST_DOUBLINGS);
    return shorter(firstRetry.multipliedBy(1L << doublings), longestRetry);
  }

  private static Duration longer(Duration one, Duration other) {
    return one.compareTo(other) > 0 ? one : other;
  }

  private static Duration shorter(Duration one, Duration other) {
    return one.compareTo(other) < 0 ? one : other;
  }
}
