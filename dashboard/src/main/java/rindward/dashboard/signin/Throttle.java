package rindward.dashboard.signin;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
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

  /**
   * What is counted.
   *
   * @param word a name or an address
   * @param whose the name that is tried
   * @param mark changes when that name gets another password, and then nothing is held against
   *     whoever tried it last; empty for a name that nobody has
   */
  record Key(String word, String whose, String mark) {}

  /**
   * What became of an attempt.
   *
   * @param pause how long it is until the next one is looked at; zero if this one is
   * @param isLastFree whether waiting begins when this one fails
   */
  record Attempt(Duration pause, boolean isLastFree) {}

  private record Failures(int count, Instant last, String whose, String mark) {
    Duration waitAfter() {
      int beyond = count - FREE_FAILURES;
      if (beyond < 0) {
        return Duration.ZERO;
      }
      Duration doubled = Duration.ofSeconds(1L << Math.min(beyond, 20));
      return doubled.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : doubled;
    }

    boolean isForgivenTo(Key key) {
      return whose.equals(key.whose) && !mark.isEmpty() && !mark.equals(key.mark);
    }
  }

  /**
   * Asks whether an attempt is looked at. One that is counts as a failure at once, before the
   * costly look, so that of many at the same time no more are looked at than one after the other.
   */
  synchronized Attempt attempt(List<Key> keys, Instant now) {
    Duration wait =
        keys.stream().map(key -> waitFor(key, now)).max(Duration::compareTo).orElse(Duration.ZERO);
    if (!wait.isZero()) {
      return new Attempt(wait, false);
    }
    boolean isLastFree = false;
    for (Key key : keys) {
      int count = count(key, now) + 1;
      byKey.put(key.word, new Failures(count, now, key.whose, key.mark));
      isLastFree |= count == FREE_FAILURES;
    }
    return new Attempt(wait, isLastFree);
  }

  /** Forgets what was counted: it was the right one. */
  synchronized void succeeded(List<Key> keys) {
    keys.forEach(key -> byKey.remove(key.word));
  }

  private Duration waitFor(Key key, Instant now) {
    Failures failures = byKey.get(key.word);
    if (failures == null || failures.isForgivenTo(key)) {
      return Duration.ZERO;
    }
    Duration left = Duration.between(now, failures.last.plus(failures.waitAfter()));
    return left.isNegative() ? Duration.ZERO : left;
  }

  private int count(Key key, Instant now) {
    Failures before = byKey.get(key.word);
    return before == null || before.isForgivenTo(key) || before.last.plus(MEMORY).isBefore(now)
        ? 0
        : before.count;
  }
}
