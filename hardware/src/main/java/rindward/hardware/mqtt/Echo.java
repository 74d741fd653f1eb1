package rindward.hardware.mqtt;

/**
 * Proof that messages get through: a message to ourselves, counted up. A connection can look alive
 * for hours while nothing passes; only what came back counts. Times are monotonic nanoseconds.
 */
final class Echo {
  static final long INTERVAL_NANOS = 10_000_000_000L;

  /** A connection whose newest echo is older than this is taken for dead. */
  static final long PATIENCE_NANOS = 30_000_000_000L;

  private long sent;
  private long firstOfConnection;
  private long lastSentNanos;
  private long lastBackNanos;

  /** Begins anew with a new connection. */
  synchronized void begin(long nowNanos) {
    lastSentNanos = nowNanos - INTERVAL_NANOS;
    lastBackNanos = nowNanos;
    firstOfConnection = sent + 1;
  }

  synchronized boolean isDue(long nowNanos) {
    return nowNanos - lastSentNanos >= INTERVAL_NANOS;
  }

  /** Returns the text of the next echo. */
  synchronized String next(long nowNanos) {
    lastSentNanos = nowNanos;
    sent++;
    return Long.toString(sent);
  }

  /** Takes note of one that came back; one of an earlier connection proves nothing. */
  synchronized void back(String text, long nowNanos) {
    boolean isOurs = text.matches("\\d{1,18}");
    if (isOurs && Long.parseLong(text) >= firstOfConnection && Long.parseLong(text) <= sent) {
      lastBackNanos = nowNanos;
    }
  }

  synchronized boolean isMissing(long nowNanos) {
    return nowNanos - lastBackNanos > PATIENCE_NANOS;
  }
}
