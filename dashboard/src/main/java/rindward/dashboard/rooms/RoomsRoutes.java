package rindward.dashboard.rooms;

import io.javalin.config.RoutesConfig;
import rindward.dashboard.live.LiveHub;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/** The routes of the rooms page: the picture once, and the picture as it changes. */
public final class RoomsRoutes {

  private RoomsRoutes() {}

  /** Adds {@code /api/now} and {@code /api/live}. */
  public static void add(RoutesConfig routes, RoomsDesk desk, LiveHub live) {
    routes.get("/api/now", ctx -> ctx.json(desk.now()), Access.READER);
    routes.get(
        "/api/live", ctx -> live.connect(ctx, Gate.caller(ctx).role() != null), Access.READER);
  }
}
