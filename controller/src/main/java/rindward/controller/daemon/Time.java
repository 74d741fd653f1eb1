package rindward.controller.daemon;

import java.time.Duration;
import java.time.Instant;
import rindward.controller.control.Tick;

/** The only place where a clock is read. Everything else is told the time. */
@FunctionalInterface
public interface Time {
  /** Returns the wall time and the monotonic time of this moment. */
  Tick now();

  /** Returns the board's own time. */
  static Time system() {
    return () -> new Tick(Instant.now(), System.nanoTime());
  }

  /** Returns a time that goes on from {@code from}, {@code factor} times as fast as the board's. */
  static Time faster(Tick from, int factor) {
    long begin = System.nanoTime();
    return () -> {
      long nanos = (System.nanoTime() - begin) * factor;
      return new Tick(from.at().plusNanos(nanos), from.nanos() + nanos);
    };
  }

  /** A time that stands still until it is moved. For one thread. */
  final class Stepped implements Time {
    private final Instant start;
    private long nanos;

    public Stepped(Instant start) {
      this.start = start;
    }

    /** Moves on. */
    public void advance(Duration by) {
      nanos += by.toNanos();
    }

    @Override
    public Tick now() {
      return new Tick(start.plusNanos(nanos), nanos);
    }
  }
}
