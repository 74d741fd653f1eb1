package rindward.dashboard.signin;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Slows down guessing. The first few failures cost nothing, for people mistype; from then on each
 * one doubles the time until the next attempt is looked at. Counts for each name and for each
 * address, remembers a bounded number of both, and forgets after an hour of quiet. For any thread.
 */
final class Throttle {
  static final int FREE_FAILURES = 8;
  static final Duration LONGEST_WAIT = Duration.ofMinutes(15);

  private static final Duration MEMORY = Duration.ofHours(1);
  private static final int MOST_KEYS = 2000;

  private final Map<String, Failures> byKey =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Failures> eldest) {
          return size() > MOST_KEYS;
        }
      };

  private record Failures(int count, Instant last) {
    Duration waitAfter() {
      int beyond = count - FREE_FAILURES;
      if (beyond < 0) {
        return Duration.ZERO;
      }
      Duration doubled = Duration.ofSeconds(1L << Math.min(beyond, 20));
      return doubled.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : doubled;
    }
  }

  /** Returns how long this key has to wait before its next attempt; zero if it need not. */
  synchronized Duration waitFor(String key, Instant now) {
    Failures failures = byKey.get(key);
    if (failures == null) {
      return Duration.ZERO;
    }
    Duration left = Duration.between(now, failures.last().plus(failures.waitAfter()));
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** Counts a failure. Returns whether it is the one after which waiting begins. */
  synchronized boolean failed(String key, Instant now) {
    Failures before = byKey.get(key);
    boolean isRemembered = before != null && !before.last().plus(MEMORY).isBefore(now);
    int count = before != null && isRemembered ? before.count() + 1 : 1;
    byKey.put(key, new Failures(count, now));
    return count == FREE_FAILURES;
  }

  synchronized void succeeded(String key) {
    byKey.remove(key);
  }
}
