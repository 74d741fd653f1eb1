package rindward.controller.daemon;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.task.TaskThread;

/**
 * What has to be ended when the program ends, newest first: threads, files, connections. What fails
 * to end costs no other its end.
 */
public final class ShutdownStack implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ShutdownStack.class);
  private static final int PATIENCE_SECONDS = 2;

  /** All threads together may take this long, so that a stop takes no more than 5 s. */
  private static final long ALL_PATIENCE_NANOS = 4_000_000_000L;

  private final Deque<Part> parts = new ArrayDeque<>();
  private long deadlineNanos;

  private record Part(String name, Runnable end) {}

  /** Adds a part that is ended before every part added so far. */
  public void add(String name, Runnable end) {
    parts.push(new Part(name, end));
  }

  /** Returns a new thread that works off what it is given, and is ended in its turn. */
  public ScheduledExecutorService thread(String name) {
    ScheduledExecutorService executor =
        Executors.newSingleThreadScheduledExecutor(
            task -> {
              Thread thread = new Thread(task, name);
              thread.setDaemon(true);
              return thread;
            });
    add(name, () -> stop(name, executor));
    return executor;
  }

  /** Returns a new thread for the turns of tasks, ended in its turn. */
  public TaskThread taskThread(String name) {
    ScheduledExecutorService executor = thread(name);
    return (pause, turn) -> {
      if (!executor.isShutdown()) {
        var unused = executor.schedule(turn, pause.toNanos(), TimeUnit.NANOSECONDS);
      }
    };
  }

  /** Ends every part; safe to call twice. */
  @Override
  public void close() {
    deadlineNanos = System.nanoTime() + ALL_PATIENCE_NANOS;
    while (!parts.isEmpty()) {
      Part part = parts.pop();
      try {
        part.end().run();
      } catch (RuntimeException e) {
        LOG.warn("{} did not end cleanly", part.name(), e);
      }
    }
  }

  /** Ends a thread now, or gives up waiting for it. */
  public void stop(String name, ScheduledExecutorService executor) {
    executor.shutdownNow();
    long left = Math.max(0, deadlineNanos - System.nanoTime());
    try {
      if (!executor.awaitTermination(
          Math.min(left, TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS)), TimeUnit.NANOSECONDS)) {
        LOG.warn("Thread {} did not end in time", name);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
