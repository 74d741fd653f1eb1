package rindward.controller.daemon;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What has to be ended when the program ends, newest first: threads, files, connections. What fails
 * to end costs no other its end.
 */
final class Ending implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(Ending.class);
  private static final int PATIENCE_SECONDS = 2;

  private final Deque<Part> parts = new ArrayDeque<>();

  private record Part(String name, Runnable end) {}

  /** Adds a part that is ended before every part added so far. */
  void add(String name, Runnable end) {
    parts.push(new Part(name, end));
  }

  /** Returns a new thread that works off what it is given, and is ended in its turn. */
  ScheduledExecutorService thread(String name) {
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

  /** Ends every part; safe to call twice. */
  @Override
  public void close() {
    while (!parts.isEmpty()) {
      Part part = parts.pop();
      try {
        part.end().run();
      } catch (RuntimeException e) {
        LOG.warn("{} did not end cleanly", part.name(), e);
      }
    }
  }

  private static void stop(String name, ScheduledExecutorService executor) {
    executor.shutdownNow();
    try {
      if (!executor.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        LOG.warn("Thread {} did not end within {} s", name, PATIENCE_SECONDS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
