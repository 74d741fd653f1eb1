package rindward.dashboard.placards;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/** Squares, there and back: one route draws them, the other reads them off a picture. */
public final class PlacardRoutes {
  private static final int MOST_CHARACTERS = 300;

  private final SquareDesk desk;
  private final SquareReader reader = new SquareReader();

  private PlacardRoutes(SquareDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, SquareDesk desk) {
    PlacardRoutes own = new PlacardRoutes(desk);
    routes.get("/api/square.svg", own::square, Access.READER);
    routes.post("/api/squares", own::squares, Access.HELPER);
  }

  private void square(Context ctx) {
    String says = ctx.queryParam("says");
    if (says == null || says.isBlank() || says.length() > MOST_CHARACTERS) {
      throw new BadRequestResponse(
          "says was missing or too long but it must have 1 to " + MOST_CHARACTERS + " characters.");
    }
    ctx.contentType("image/svg+xml").result(desk.svg(says));
  }

  private void squares(Context ctx) {
    Gate.changesNothing(ctx);
    PictureRequest picture = JsonBody.read(ctx, PictureRequest.class);
    try {
      ctx.json(new SquaresView(reader.read(picture.bytes())));
    } catch (IllegalArgumentException refused) {
      throw new BadRequestResponse(String.valueOf(refused.getMessage()));
    }
  }
}
