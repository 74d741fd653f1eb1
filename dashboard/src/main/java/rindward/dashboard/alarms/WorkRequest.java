package rindward.dashboard.alarms;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/** What the page sends when somebody works in a room, or has ended. */
record WorkRequest(String room, @Nullable Instant until) {
  WorkRequest {
    JsonBody.needed(room, "room", 100);
    if (until == null) {
      throw new IllegalArgumentException("until was missing but work must have an end time.");
    }
  }
}
