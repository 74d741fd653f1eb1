package rindward.dashboard.shed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Replays;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/** The routes of the shed page, and of switching by hand. */
public final class ShedRoutes {
  private final ShedDesk desk;

  private ShedRoutes(ShedDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, ShedDesk desk) {
    ShedRoutes own = new ShedRoutes(desk);
    routes.get("/api/shed", ctx -> ctx.json(desk.shed()), Access.READER);
    routes.post("/api/shed/commands", own::command, Access.HELPER);
    routes.delete("/api/shed/commands/{room}/{kind}", own::release, Access.HELPER);
  }

  private void command(Context ctx) {
    CommandRequest request = JsonBody.read(ctx, CommandRequest.class);
    boolean on = Objects.requireNonNull(request.on());
    Instant until = Objects.requireNonNull(request.until());
    refuseWrongEnd(until);
    String by = Gate.caller(ctx).name();
    try {
      desk.command(
          new ManualCommand(request.room(), request.kind(), on, until, by, Replays.key(ctx)));
    } catch (SwitchingRefused refused) {
      throw new ConflictResponse(String.valueOf(refused.getMessage()));
    }
    Gate.done(
        ctx,
        "switched the %s of %s %s until %s"
            .formatted(request.kind(), request.room(), on ? "on" : "off", until));
    ctx.status(201).json(desk.shed());
  }

  private void release(Context ctx) {
    String room = ctx.pathParam("room");
    String kind = ctx.pathParam("kind");
    try {
      desk.release(room, kind, Gate.caller(ctx).name());
    } catch (SwitchingRefused refused) {
      throw new ConflictResponse(String.valueOf(refused.getMessage()));
    }
    Gate.done(ctx, "let the " + kind + " of " + room + " run by itself");
    ctx.json(desk.shed());
  }

  private void refuseWrongEnd(Instant until) {
    Instant now = desk.now();
    long most = desk.shed().longestManualMinutes();
    // A minute's grace, for the person needed a moment to confirm.
    if (!until.isAfter(now) || until.isAfter(now.plus(Duration.ofMinutes(most + 1)))) {
      throw new BadRequestResponse(
          "until was '%s' but it must be after now and at most %d minutes ahead."
              .formatted(until, most));
    }
  }
}
