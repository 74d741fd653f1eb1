package rindward.controller.daemon;

import java.time.Duration;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Keeps the ticks to their beat, on the one thread that owns the control. A tick that comes too
 * late is counted, not made up for.
 */
final class TickScheduler {
  private static final Logger LOG = LoggerFactory.getLogger(TickScheduler.class);

  /** Somebody who switches without end by hand must not make control busy. */
  private static final long LEAST_NANOS = 500_000_000L;

  private final ControlLoop loop;
  private final ScheduledExecutorService control;
  private final long tickNanos;
  private final Runnable afterEachTick;
  private final Runnable whenItDies;
  private final AtomicBoolean isSoon = new AtomicBoolean();
  private volatile long lastNanos = System.nanoTime();

  /**
   * @param tick how long from one tick to the next, on the machine's clock
   * @param afterEachTick told on the control thread; must not wait for anything
   * @param whenItDies told when there will be no further tick although nobody has ended it
   */
  TickScheduler(
      ControlLoop loop,
      ScheduledExecutorService control,
      Duration tick,
      Runnable afterEachTick,
      Runnable whenItDies) {
    this.loop = loop;
    this.control = control;
    this.tickNanos = tick.toNanos();
    this.afterEachTick = afterEachTick;
    this.whenItDies = whenItDies;
  }

  /** Begins with a tick now. */
  void start() {
    control.execute(() -> tickAt(System.nanoTime()));
  }

  /**
   * Adds a tick between two, so that what a hand has switched need not wait for the next one; not
   * sooner than {@link #LEAST_NANOS} after the last. Any thread.
   */
  void soon() {
    if (isSoon.compareAndSet(false, true)) {
      long due = lastNanos + Math.min(LEAST_NANOS, tickNanos);
      var unused =
          control.schedule(this::tickBetween, due - System.nanoTime(), TimeUnit.NANOSECONDS);
    }
  }

  private void tickBetween() {
    isSoon.set(false);
    boolean unused = tick();
  }

  private void tickAt(long dueNanos) {
    if (!tick()) {
      return;
    }
    long next = dueNanos + tickNanos;
    long late = System.nanoTime() - next;
    if (late > 0) {
      long skipped = late / tickNanos + 1;
      loop.countOverruns(skipped);
      next += skipped * tickNanos;
    }
    long due = next;
    var unused = control.schedule(() -> tickAt(due), due - System.nanoTime(), TimeUnit.NANOSECONDS);
  }

  /** Returns whether there will be further ticks. */
  private boolean tick() {
    lastNanos = System.nanoTime();
    try {
      loop.tick();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    } catch (Error e) {
      // Out of memory, for one: there will be no further tick, so nothing may stay on.
      die(e);
      throw e;
    }
    try {
      afterEachTick.run();
    } catch (Error e) {
      die(e);
      throw e;
    } catch (RuntimeException e) {
      LOG.error("What follows a tick failed", e);
    }
    return true;
  }

  private void die(Error why) {
    try {
      loop.allOff();
      LOG.error("The control loop has ended; everything is switched off", why);
    } finally {
      whenItDies.run();
    }
  }
}
