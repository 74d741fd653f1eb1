package rindward.dashboard.lots;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;

/**
 * What a page sends to say something of lots.
 *
 * @param kind as a file of lots names it
 * @param lots codes of one or several
 * @param fields what is said, by the columns of a file of lots
 * @param at when it happened
 * @param agoSeconds how long ago it happened, for a phone that waited for the network and whose
 *     clock nobody trusts; now if neither is given
 */
record EntryRequest(
    String kind,
    List<String> lots,
    Map<String, String> fields,
    @Nullable Instant at,
    @Nullable Long agoSeconds) {
  private static final int MOST_LOTS = 200;
  private static final long YEAR_SECONDS = 366L * 86_400;

  EntryRequest {
    JsonBody.needed(kind, "kind", 40);
    FieldsRequest.check(fields);
    if (lots == null || lots.isEmpty() || lots.size() > MOST_LOTS) {
      throw new IllegalArgumentException(
          "lots was missing or too long but it must name 1 to " + MOST_LOTS + " lots.");
    }
    lots.forEach(code -> JsonBody.needed(code, "lots", 40));
    if (at != null && agoSeconds != null) {
      throw new IllegalArgumentException("at and agoSeconds were both given but only one may be.");
    }
    if (agoSeconds != null && (agoSeconds < 0 || agoSeconds > YEAR_SECONDS)) {
      throw new IllegalArgumentException(
          "agoSeconds was '" + agoSeconds + "' but it must be 0 to " + YEAR_SECONDS + ".");
    }
    lots = List.copyOf(lots);
    fields = Map.copyOf(fields);
  }
}
