package rindward.dashboard.entrance;

import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Answers only to names that are the shed's own. Whoever owns a name may let it mean the shed's
 * address from one minute to the next; a browser that shows that somebody's page would then take
 * what the shed answers for part of it (DNS rebinding). Own are the address that was called, {@code
 * localhost}, and what the settings name.
 */
public final class OwnNames {
  private static final int MISDIRECTED = 421; // RFC 9110, section 15.5.20
  private static final int MOST_REPEATED = 80;

  private final Set<String> told;

  /**
   * @param told names or addresses without a port, besides the shed's own addresses
   */
  public OwnNames(Collection<String> told) {
    this.told = told.stream().map(OwnNames::word).collect(Collectors.toUnmodifiableSet());
  }

  /**
   * Lets through what calls the shed by a name of its own.
   *
   * @throws HttpResponseException with status 421 and one sentence otherwise
   */
  public void check(Context ctx) {
    String host = ctx.header("Host");
    if (host != null && !admits(host, ctx.req().getLocalAddr())) {
      throw new HttpResponseException(
          MISDIRECTED,
          "This shed does not know itself by the name '"
              + host.substring(0, Math.min(host.length(), MOST_REPEATED))
              + "'; call it by its address, or add the name to names under [dashboard] in its"
              + " settings.",
          Map.of());
    }
  }

  /**
   * Tells whether a name is ours.
   *
   * @param host as the request gives it, with or without a port
   * @param called the address that the connection came in by
   */
  boolean admits(String host, String called) {
    String name = word(withoutPort(host));
    return name.equals("localhost") || name.equals(word(called)) || told.contains(name);
  }

  private static String withoutPort(String host) {
    return host.replaceFirst(":[0-9]{0,5}$", "").replaceAll("^\\[|]$", "");
  }

  /** One spelling for names that mean the same. */
  private static String word(String name) {
    String bare = name.replaceAll("^\\[|]$", "").replaceFirst("\\.$", "");
    return bare.contains(":") ? Origin.figure(bare) : bare.toLowerCase(Locale.ROOT);
  }
}
