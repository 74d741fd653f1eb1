package rindward.dashboard.lots;

import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Who says it, and under which conditions.
 *
 * @param by who says it
 * @param isOwner whether that is an owner, who may say more
 * @param request the same for the same saying sent again
 * @param seen the version of each lot that the sender had seen; a lot that is missing may have
 *     changed
 * @param at when it happened; null for now
 */
public record LotChange(
    String by, boolean isOwner, String request, Map<String, Long> seen, @Nullable Instant at) {
  public LotChange {
    seen = Map.copyOf(seen);
  }

  /** A change by a helper. */
  public LotChange(String by, String request, Map<String, Long> seen, @Nullable Instant at) {
    this(by, false, request, seen, at);
  }
}
