package rindward.hardware;

/**
 * Time for durations. It never jumps, unlike the wall clock of a board that had no battery and then
 * found the network; it says nothing about the date.
 */
@FunctionalInterface
public interface MonotonicClock {
  /** Returns nanoseconds since an arbitrary moment. */
  long nanos();
}
