package rindward.dashboard.tastings;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Page;
import rindward.dashboard.request.Replays;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/**
 * The routes of the tastings pages. A taster has no account: the secret in the address of the sheet
 * is all that vouches, and it opens that one sheet and nothing else.
 */
public final class TastingsRoutes {
  private final TastingsDesk desk;

  private TastingsRoutes(TastingsDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, TastingsDesk desk) {
    TastingsRoutes own = new TastingsRoutes(desk);
    routes.get("/api/tastings", ctx -> ctx.json(desk.tastings(Page.of(ctx))), Access.READER);
    routes.post("/api/tastings", own::plan, Access.OWNER);
    routes.get("/api/tastings/{name}", own::tasting, Access.READER);
    routes.get("/api/tastings/{name}/kitchen", own::kitchen, Access.OWNER);
    routes.post("/api/tastings/{name}/cooked", own::cooked, Access.OWNER);
    routes.delete("/api/tastings/{name}/cooked/{sample}/{fruit}", own::uncooked, Access.OWNER);
    routes.post("/api/tastings/{name}/end", own::close, Access.OWNER);
    routes.get("/api/taste/{secret}", own::sheet, Access.ANYONE);
    routes.post("/api/taste/{secret}", own::score, Access.ANYONE);
  }

  private void tasting(Context ctx) {
    ctx.json(desk.tasting(ctx.pathParam("name")).orElseThrow(TastingsRoutes::noTasting));
  }

  private void kitchen(Context ctx) {
    ctx.json(desk.kitchen(ctx.pathParam("name")).orElseThrow(TastingsRoutes::noTasting));
  }

  private void plan(Context ctx) {
    PlanRequest plan = JsonBody.read(ctx, PlanRequest.class);
    TastingView planned = kept(() -> desk.plan(plan, Gate.caller(ctx).name(), Replays.key(ctx)));
    Gate.done(ctx, "planned the tasting " + planned.tasting().name());
    ctx.status(201).json(planned);
  }

  private void cooked(Context ctx) {
    String name = ctx.pathParam("name");
    CookedRequest cooked = JsonBody.read(ctx, CookedRequest.class);
    KitchenView kitchen =
        kept(() -> desk.cooked(name, cooked, Gate.caller(ctx).name(), Replays.key(ctx)));
    Gate.done(ctx, "noted what was cooked for " + cooked.sample() + " of the tasting " + name);
    ctx.status(201).json(kitchen);
  }

  private void uncooked(Context ctx) {
    String name = ctx.pathParam("name");
    String sample = ctx.pathParam("sample");
    String fruit = ctx.pathParam("fruit");
    KitchenView kitchen =
        kept(() -> desk.uncooked(name, sample, fruit, Gate.caller(ctx).name(), Replays.key(ctx)));
    Gate.done(ctx, "took back what was cooked for " + sample + " of the tasting " + name);
    ctx.json(kitchen);
  }

  private void close(Context ctx) {
    String name = ctx.pathParam("name");
    EndRequest end = JsonBody.read(ctx, EndRequest.class);
    TastingView closed =
        kept(() -> desk.close(name, end, Gate.caller(ctx).name(), Replays.key(ctx)));
    Gate.done(ctx, "closed the tasting " + name);
    ctx.json(closed);
  }

  private void sheet(Context ctx) {
    ctx.json(desk.sheet(ctx.pathParam("secret")).orElseThrow(TastingsRoutes::noSheet));
  }

  private void score(Context ctx) {
    Gate.done(ctx, "scored a cup by a taster's link"); // Never the address: it is the secret.
    CupRequest said = JsonBody.read(ctx, CupRequest.class);
    Long ago = said.agoSeconds();
    Instant at = desk.now().minusSeconds(ago == null ? 0 : ago);
    ctx.status(201)
        .json(kept(() -> desk.score(ctx.pathParam("secret"), said, Replays.key(ctx), at)));
  }

  private static NotFoundResponse noTasting() {
    return new NotFoundResponse("There is no tasting of that name.");
  }

  private static NotFoundResponse noSheet() {
    return new NotFoundResponse("This link opens no tasting. Ask for it again.");
  }

  /** Something that the controller may refuse to keep. */
  @FunctionalInterface
  private interface Saying<T> {
    T say() throws TastingRefused;
  }

  private static <T> T kept(Saying<T> saying) {
    try {
      return saying.say();
    } catch (TastingRefused refused) {
      String sentence = String.valueOf(refused.getMessage());
      throw switch (refused.why()) {
        case MALFORMED -> new BadRequestResponse(sentence);
        case CONTRADICTED -> new ConflictResponse(sentence);
        case UNKNOWN -> new NotFoundResponse(sentence);
      };
    }
  }
}
