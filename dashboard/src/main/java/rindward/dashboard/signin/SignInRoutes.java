package rindward.dashboard.signin;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import java.time.Duration;
import rindward.dashboard.request.JsonBody;

/** The routes of setting up, signing in and out, and of a person's own sessions and tokens. */
public final class SignInRoutes {
  /** The cookie by which a device is known again when its session is over. */
  private static final String DEVICE = "rindward-device";

  private static final int DEVICE_SECONDS = Math.toIntExact(Duration.ofDays(400).toSeconds());

  private final SignIn signIn;
  private final boolean openReading;

  private SignInRoutes(SignIn signIn, boolean openReading) {
    this.signIn = signIn;
    this.openReading = openReading;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, SignIn signIn, boolean openReading) {
    SignInRoutes own = new SignInRoutes(signIn, openReading);
    routes.get("/api/me", ctx -> ctx.json(own.me(ctx)), Access.ANYONE);
    routes.post("/api/set-up", own::setUp, Access.ANYONE);
    routes.post("/api/sign-in", own::signIn, Access.ANYONE);
    routes.post("/api/sign-out", own::signOut, Access.PANELIST);
    routes.put("/api/me/password", own::changePassword, Access.PANELIST);
    routes.get("/api/tokens", own::tokens, Access.PANELIST);
    routes.post("/api/tokens", own::makeToken, Access.PANELIST);
    routes.delete("/api/tokens/{id}", own::endToken, Access.PANELIST);
  }

  private MeView me(Context ctx) {
    Caller caller = Gate.caller(ctx);
    String session = ctx.header("Authorization") == null ? ctx.cookie(Gate.COOKIE) : null;
    boolean isSignedIn = caller.role() != null;
    return new MeView(
        isSignedIn ? caller.name() : null,
        caller.role(),
        isSignedIn && session != null ? Gate.csrfToken(session) : null,
        signIn.needsOwner(),
        openReading);
  }

  private void setUp(Context ctx) {
    SetUpRequest request = JsonBody.read(ctx, SetUpRequest.class);
    Tokens.Made made =
        signIn.setUp(request.code(), request.name(), request.password(), ctx.ip(), browser(ctx));
    begin(ctx, made);
  }

  private void signIn(Context ctx) {
    SignInRequest request = JsonBody.read(ctx, SignInRequest.class);
    begin(
        ctx,
        signIn.signIn(
            request.name(), request.password(), ctx.ip(), browser(ctx), ctx.cookie(DEVICE)));
  }

  private void begin(Context ctx, Tokens.Made made) {
    int seconds = Math.toIntExact(Tokens.SESSION_LIFE.toSeconds());
    Token token = made.token();
    ctx.cookie(cookie(ctx, Gate.COOKIE, made.secret(), seconds));
    ctx.cookie(cookie(ctx, DEVICE, signIn.deviceOf(token.person()), DEVICE_SECONDS));
    ctx.json(
        new MeView(
            token.person(), token.role(), Gate.csrfToken(made.secret()), false, openReading));
  }

  private void signOut(Context ctx) {
    Caller caller = Gate.caller(ctx);
    signIn.tokens().end(caller.name(), caller.tokenId());
    ctx.cookie(cookie(ctx, Gate.COOKIE, "", 0));
    Gate.done(ctx, "signed out");
    ctx.status(204);
  }

  private void changePassword(Context ctx) {
    PasswordRequest request = JsonBody.read(ctx, PasswordRequest.class);
    signIn.changePassword(Gate.caller(ctx), request.old(), request.wanted(), ctx.ip());
    Gate.done(ctx, "changed their password");
    ctx.status(204);
  }

  private void tokens(Context ctx) {
    Caller caller = Gate.caller(ctx);
    ctx.json(
        signIn.tokens().of(caller.name()).stream()
            .map(token -> TokenView.of(token, caller, null))
            .toList());
  }

  private void makeToken(Context ctx) {
    TokenRequest request = JsonBody.read(ctx, TokenRequest.class);
    Caller caller = Gate.caller(ctx);
    Tokens.Made made =
        signIn.tokens().api(caller, Role.of(request.role()), request.label().strip(), signIn.now());
    Gate.done(ctx, "made the API token '" + made.token().label() + "'");
    ctx.status(201).json(TokenView.of(made.token(), caller, made.secret()));
  }

  private void endToken(Context ctx) {
    Token ended =
        signIn
            .tokens()
            .end(Gate.caller(ctx).name(), ctx.pathParam("id"))
            .orElseThrow(() -> new NotFoundResponse("You have no such session or token."));
    String kind = ended.isSession() ? "session" : "API token";
    Gate.done(ctx, "ended the " + kind + " '" + ended.label() + "'");
    ctx.status(204);
  }

  private static Cookie cookie(Context ctx, String name, String value, int maxAgeSeconds) {
    boolean secure = ctx.scheme().equals("https");
    return new Cookie(name, value, "/", maxAgeSeconds, secure, true, null, SameSite.STRICT);
  }

  /** What a person would call the device, from what its browser says of itself. */
  private static String browser(Context ctx) {
    String agent = String.valueOf(ctx.userAgent());
    for (String device : new String[] {"iPhone", "iPad", "Android", "Windows", "Mac", "Linux"}) {
      if (agent.contains(device)) {
        return device;
      }
    }
    return "another device";
  }
}
