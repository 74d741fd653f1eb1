package rindward.dashboard.placards;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import rindward.dashboard.signin.Access;

/** The one route of the placards page; places and lots it knows from the lots. */
public final class PlacardRoutes {
  private static final int MOST_CHARACTERS = 300;

  private final SquareDesk desk;

  private PlacardRoutes(SquareDesk desk) {
    this.desk = desk;
  }

  /** Adds it. */
  public static void add(RoutesConfig routes, SquareDesk desk) {
    routes.get("/api/square.svg", new PlacardRoutes(desk)::square, Access.READER);
  }

  private void square(Context ctx) {
    String says = ctx.queryParam("says");
    if (says == null || says.isBlank() || says.length() > MOST_CHARACTERS) {
      throw new BadRequestResponse(
          "says was missing or too long but it must have 1 to " + MOST_CHARACTERS + " characters.");
    }
    ctx.contentType("image/svg+xml").result(desk.svg(says));
  }
}
