package rindward.controller.daemon;

import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.controller.control.Reason;
import rindward.controller.control.ReasonCode;

/**
 * Lets one note a day through for each room and cause, and only of what has lasted an hour.
 * Confined to the control loop thread.
 */
final class DayNotes {
  private static final long LASTED_NANOS = Duration.ofHours(1).toNanos();
  private static final long DAY_NANOS = Duration.ofDays(1).toNanos();

  private final Map<String, Lasting> lasting = new HashMap<>();
  private final Map<String, Long> noted = new HashMap<>();

  private record Lasting(ReasonCode because, long sinceNanos) {}

  /** Tells whether what is said of a room now is worth its note; null is nothing. */
  boolean isDue(String room, @Nullable Reason said, long nowNanos) {
    if (said == null) {
      lasting.remove(room);
      return false;
    }
    Lasting before = lasting.get(room);
    if (before == null || before.because() != said.because()) {
      lasting.put(room, new Lasting(said.because(), nowNanos));
      return false;
    }
    String key = room + " " + said.because();
    Long last = noted.get(key);
    boolean isDue =
        nowNanos - before.sinceNanos() >= LASTED_NANOS
            && (last == null || nowNanos - last >= DAY_NANOS);
    if (isDue) {
      noted.put(key, nowNanos);
    }
    return isDue;
  }
}
