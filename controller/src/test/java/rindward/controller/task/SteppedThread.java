package rindward.controller.task;

import java.time.Duration;
import java.util.Comparator;
import java.util.PriorityQueue;

/** Takes the turns of tasks in place while its time is moved by hand; of all threads in one. */
public final class SteppedThread implements TaskThread {
  private final PriorityQueue<Turn> waiting =
      new PriorityQueue<>(Comparator.comparingLong(Turn::dueNanos).thenComparingLong(Turn::number));
  private long nanos;
  private long turns;

  private record Turn(long dueNanos, long number, Runnable work) {}

  /** Returns the monotonic time. */
  public long nanos() {
    return nanos;
  }

  @Override
  public void after(Duration pause, Runnable turn) {
    turns++;
    waiting.add(new Turn(nanos + pause.toNanos(), turns, turn));
  }

  /** Moves on, taking every turn that falls due on the way at its own time. */
  public void advance(Duration by) {
    long end = nanos + by.toNanos();
    for (Turn next = waiting.peek();
        next != null && next.dueNanos() <= end;
        next = waiting.peek()) {
      waiting.remove();
      nanos = next.dueNanos();
      next.work().run();
    }
    nanos = end;
  }
}
