package rindward.dashboard.signin;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.UnauthorizedResponse;
import io.javalin.http.UnsupportedMediaTypeResponse;
import io.javalin.security.RouteRole;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Stands before every route. Finds out who is calling, lets through what the route's {@link Access}
 * allows, and notes each change that was made. A change is believed only when it comes from our own
 * page (origin, session cookie of the same site, and a token that only our page can read) or from a
 * program that holds an API token.
 */
public final class Gate {
  static final String COOKIE = "rindward";
  static final String CSRF_HEADER = "X-CSRF-Token";

  private static final String CALLER = "caller";
  private static final String DONE = "done";
  private static final String NOTHING = "nothing";
  private static final String BEARER = "Bearer ";
  private static final Set<HandlerType> HARMLESS =
      Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

  private final SignIn signIn;
  private final boolean openReading;

  /**
   * @param openReading whether everybody on the network may read
   */
  public Gate(SignIn signIn, boolean openReading) {
    this.signIn = signIn;
    this.openReading = openReading;
  }

  /** Stands before everything added to {@code routes}. */
  public void add(RoutesConfig routes) {
    routes.beforeMatched(this::check);
    routes.after("/api/*", this::noteChange);
  }

  /** Returns who makes the request. */
  public static Caller caller(Context ctx) {
    Caller caller = ctx.attribute(CALLER);
    return caller == null ? Caller.NOBODY : caller;
  }

  /** Says in a few words what the request has changed, for the record of changes. */
  public static void done(Context ctx, String what) {
    ctx.attribute(DONE, what);
  }

  /** Says that the request only asks, about something too large for an address: it is not noted. */
  public static void changesNothing(Context ctx) {
    ctx.attribute(DONE, NOTHING);
  }

  /** Returns the token that our page sends along with every change, made from the session. */
  static String csrfToken(String sessionSecret) {
    return Secrets.hash("change " + sessionSecret);
  }

  static boolean isChange(Context ctx) {
    return !HARMLESS.contains(ctx.method());
  }

  private void check(Context ctx) {
    Access access = accessOf(ctx);
    if (access == Access.ANYONE && !isChange(ctx) && !ctx.path().startsWith("/api/")) {
      return; // The site's own files say nothing of the farm.
    }
    String authorization = ctx.header("Authorization");
    String session = ctx.cookie(COOKIE);
    Caller caller = Caller.NOBODY;
    if (authorization != null) {
      caller = bearer(authorization);
    } else if (session != null) {
      caller = signIn.who(session).orElse(Caller.NOBODY);
    }
    if (isChange(ctx) && authorization == null) {
      refuseForeign(ctx, session, caller);
    }
    ctx.attribute(CALLER, caller);
    if (!access.admits(caller, openReading)) {
      if (caller.role() == null) {
        throw new UnauthorizedResponse("Sign in first.");
      }
      throw new ForbiddenResponse(
          "This needs more than a " + caller.role().word() + " is allowed.");
    }
  }

  private Caller bearer(String authorization) {
    Optional<Caller> caller =
        authorization.startsWith(BEARER)
            ? signIn.who(authorization.substring(BEARER.length()).strip())
            : Optional.empty();
    return caller.orElseThrow(
        () -> new UnauthorizedResponse("The API token is wrong, or was ended, or has expired."));
  }

  /** A page of another site can make a browser send; what it cannot send is checked here. */
  private static void refuseForeign(Context ctx, @Nullable String session, Caller caller) {
    String site = ctx.header("Sec-Fetch-Site");
    String origin = ctx.header("Origin");
    boolean foreignSite = site != null && !site.equals("same-origin");
    boolean foreignOrigin = origin != null && !isHost(origin, ctx.host());
    if (foreignSite || foreignOrigin) {
      throw new ForbiddenResponse("A change must come from this site's own pages.");
    }
    String type = ctx.contentType();
    boolean isJson = type != null && type.split(";", 2)[0].strip().equals("application/json");
    if (ctx.method() != HandlerType.DELETE && !isJson) {
      throw new UnsupportedMediaTypeResponse(
          "Content-Type was '" + type + "' but it must be application/json.");
    }
    if (session != null && caller.role() != null) {
      String token = ctx.header(CSRF_HEADER);
      if (token == null || !Secrets.same(token, csrfToken(session))) {
        throw new ForbiddenResponse("The page is out of date; load it again and repeat.");
      }
    }
  }

  private static boolean isHost(String origin, @Nullable String host) {
    try {
      String authority = URI.create(origin).getAuthority();
      return authority != null && authority.equals(host);
    } catch (IllegalArgumentException notAnAddress) {
      return false;
    }
  }

  private static Access accessOf(Context ctx) {
    for (RouteRole role : ctx.routeRoles()) {
      if (role instanceof Access access) {
        return access;
      }
    }
    return Access.OWNER;
  }

  private void noteChange(Context ctx) {
    Caller caller = caller(ctx);
    if (!isChange(ctx) || caller.role() == null || ctx.statusCode() >= 300) {
      return;
    }
    String what = ctx.attribute(DONE);
    if (NOTHING.equals(what)) {
      return;
    }
    signIn.note(caller.name(), what == null ? ctx.method() + " " + ctx.path() : what);
  }
}
