package rindward.controller.notice;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * What one channel still has to send. Leaving a notice never waits; a worker calls {@link #work}
 * about once a second. A channel that fails is tried again after longer and longer waits, and says
 * so through {@link #trouble()}. When too much has gathered the oldest is dropped, and told.
 *
 * <p>Thread-safe; {@link #work} belongs to one thread.
 */
public final class DeliveryQueue {
  private static final Logger LOG = LoggerFactory.getLogger(DeliveryQueue.class);
  private static final int MOST_WAITING = 100;
  private static final Duration FIRST_WAIT = Duration.ofSeconds(5);
  private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);

  private final Channel channel;
  private final Deque<Notice> waiting = new ArrayDeque<>();
  private Duration wait = FIRST_WAIT;
  private long nextTryNanos = Long.MIN_VALUE;
  private volatile String trouble = "";

  public DeliveryQueue(Channel channel) {
    this.channel = channel;
  }

  /** Leaves a notice to be sent. */
  public synchronized void leave(Notice notice) {
    if (waiting.size() == MOST_WAITING) {
      Notice oldest = waiting.removeFirst();
      LOG.warn("Channel {} is behind; dropped: {}", channel.name(), oldest.subject());
    }
    waiting.addLast(notice);
  }

  /** Returns how many notices wait. */
  public synchronized int waiting() {
    return waiting.size();
  }

  /** Returns why the last attempt failed, in one sentence; empty when all is well. */
  public String trouble() {
    return trouble;
  }

  /**
   * Sends what waits, until it is all gone or one fails.
   *
   * @param nowNanos monotonic
   */
  public void work(long nowNanos) {
    if (nextTryNanos != Long.MIN_VALUE && nowNanos - nextTryNanos < 0) {
      return;
    }
    for (Notice next = first(); next != null; next = first()) {
      try {
        channel.send(next);
      } catch (IOException | RuntimeException e) {
        trouble = "Channel " + channel.name() + ": " + e.getMessage();
        LOG.warn("{}; trying again in {} s", trouble, wait.toSeconds());
        nextTryNanos = nowNanos + wait.toNanos();
        wait =
            wait.multipliedBy(2).compareTo(LONGEST_WAIT) < 0 ? wait.multipliedBy(2) : LONGEST_WAIT;
        return;
      }
      LOG.info("Channel {} has taken: {}", channel.name(), next.subject());
      taken(next);
      trouble = "";
      wait = FIRST_WAIT;
      nextTryNanos = Long.MIN_VALUE;
    }
  }

  private synchronized @Nullable Notice first() {
    return waiting.peekFirst();
  }

  private synchronized void taken(Notice notice) {
    waiting.removeFirstOccurrence(notice);
  }
}
