package rindward.dashboard.varieties;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Page;
import rindward.dashboard.request.Replays;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/** The routes of the varieties page. */
public final class VarietiesRoutes {
  private final VarietiesDesk desk;

  private VarietiesRoutes(VarietiesDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, VarietiesDesk desk) {
    VarietiesRoutes own = new VarietiesRoutes(desk);
    routes.get("/api/varieties", ctx -> ctx.json(desk.varieties(Page.of(ctx))), Access.READER);
    routes.post("/api/varieties/decisions", own::decide, Access.OWNER);
  }

  private void decide(Context ctx) {
    DecisionRequest decision = JsonBody.read(ctx, DecisionRequest.class);
    try {
      ctx.status(201).json(desk.decide(decision, Gate.caller(ctx).name(), Replays.key(ctx)));
      Gate.done(ctx, "decided on " + decision.variety() + ": " + decision.decision());
    } catch (DecisionRefused refused) {
      throw new BadRequestResponse(String.valueOf(refused.getMessage()));
    }
  }
}
