package rindward.dashboard.shed;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * What the page sends to switch an output by hand.
 *
 * @param until the end time that the person confirmed
 */
record CommandRequest(String room, String kind, @Nullable Boolean on, @Nullable Instant until) {
  CommandRequest {
    JsonBody.needed(room, "room", 100);
    JsonBody.needed(kind, "kind", 40);
    if (on == null) {
      throw new IllegalArgumentException("on was missing but it must be true or false.");
    }
    if (until == null) {
      throw new IllegalArgumentException(
          "until was missing but a manual command must have an end time.");
    }
  }
}
