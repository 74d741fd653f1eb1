package rindward.dashboard.lots;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Versions of lots on the wire: {@code "K4T-12"} is lot K4T as its entry 12 left it. {@code
 * If-Match} may name several lots, and each must still be as it was.
 */
final class Versions {
  private static final Pattern TAG = Pattern.compile("\"([A-Z0-9-]{1,12})-([0-9]{1,18})\"");
  private static final int LONGEST = 8_000;

  private Versions() {}

  /** Returns the {@code ETag} of a lot. */
  static String tag(LotLine lot) {
    return "\"" + lot.code() + "-" + lot.version() + "\"";
  }

  /**
   * Returns which version of which lot the sender has seen; nothing where it does not say.
   *
   * @throws BadRequestResponse when it cannot be read
   */
  static Map<String, Long> seen(Context ctx) {
    Map<String, Long> seen = new LinkedHashMap<>();
    String header = ctx.header("If-Match");
    if (header == null) {
      return seen;
    }
    for (String each : header.length() > LONGEST ? new String[] {""} : header.split(",", -1)) {
      Matcher tag = TAG.matcher(each.strip());
      if (!tag.matches()) {
        throw new BadRequestResponse(
            "If-Match could not be read but it must name lots with their versions, such as"
                + " \"K4T-12\", \"B1-15\".");
      }
      seen.put(tag.group(1), Long.valueOf(tag.group(2)));
    }
    return seen;
  }
}
