package rindward.controller.store.samples;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * A bounded queue of what waits for the disk: when it is full the oldest is given up. Items are
 * released only once written, and those given up meanwhile are not counted twice.
 */
final class PendingQueue<T> {
  private final int capacity;
  private final ArrayDeque<T> queue = new ArrayDeque<>();
  private long released;
  private long lost;

  PendingQueue(int capacity) {
    this.capacity = capacity;
  }

  /** What stood in the queue at one moment; {@code end} names the moment to {@link #release}. */
  record Batch<T>(List<T> items, long end) {}

  synchronized void add(T item) {
    if (queue.size() == capacity) {
      queue.remove();
      released++;
      lost++;
    }
    queue.add(item);
  }

  synchronized Batch<T> batch() {
    return new Batch<>(new ArrayList<>(queue), released + queue.size());
  }

  synchronized void release(Batch<T> written) {
    while (released < written.end()) {
      queue.remove();
      released++;
    }
  }

  synchronized int size() {
    return queue.size();
  }

  synchronized long lost() {
    return lost;
  }
}
