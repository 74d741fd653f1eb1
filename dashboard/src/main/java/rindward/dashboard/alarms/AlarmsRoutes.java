package rindward.dashboard.alarms;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import java.util.Objects;
import rindward.dashboard.alarms.AlarmsDesk.Answer;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Replays;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Gate;

/** The routes of the alarms page. */
public final class AlarmsRoutes {
  private static final int USUAL_PAGE = 50;
  private static final int LONGEST_PAGE = 500;

  private final AlarmsDesk desk;

  private AlarmsRoutes(AlarmsDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, AlarmsDesk desk) {
    AlarmsRoutes own = new AlarmsRoutes(desk);
    routes.get("/api/alarms", ctx -> ctx.json(desk.alarms()), Access.READER);
    routes.get("/api/alarms/history", own::history, Access.READER);
    routes.get("/api/alarms/rules", ctx -> ctx.json(desk.rules()), Access.READER);
    routes.post("/api/alarms/answers", own::answer, Access.HELPER);
    routes.post("/api/alarms/work", own::work, Access.HELPER);
  }

  private void history(Context ctx) {
    try {
      ctx.json(desk.history(ctx.queryParam("before"), size(ctx)));
    } catch (IllegalArgumentException wrong) {
      throw new BadRequestResponse(String.valueOf(wrong.getMessage()));
    }
  }

  private void answer(Context ctx) {
    AnswerRequest request = JsonBody.read(ctx, AnswerRequest.class);
    try {
      desk.answer(
          new Answer(
              request.alarm(),
              request.answer(),
              request.until(),
              request.code(),
              Gate.caller(ctx).name(),
              Replays.key(ctx)));
    } catch (AlarmRefused refused) {
      throw new ConflictResponse(String.valueOf(refused.getMessage()));
    }
    Gate.done(ctx, "answered the alarm " + request.alarm() + ": " + request.answer());
    ctx.status(201).json(desk.alarms());
  }

  private void work(Context ctx) {
    WorkRequest request = JsonBody.read(ctx, WorkRequest.class);
    try {
      desk.work(
          request.room(),
          Objects.requireNonNull(request.until()),
          Gate.caller(ctx).name(),
          Replays.key(ctx));
    } catch (AlarmRefused refused) {
      throw new ConflictResponse(String.valueOf(refused.getMessage()));
    }
    Gate.done(ctx, "said that somebody works in " + request.room() + " until " + request.until());
    ctx.status(201).json(desk.alarms());
  }

  private static int size(Context ctx) {
    String asked = ctx.queryParam("size");
    if (asked == null) {
      return USUAL_PAGE;
    }
    if (!asked.matches("\\d{1,3}")
        || Integer.parseInt(asked) < 1
        || Integer.parseInt(asked) > LONGEST_PAGE) {
      throw new BadRequestResponse(
          "size was '" + asked + "' but it must be a number from 1 to " + LONGEST_PAGE + ".");
    }
    return Integer.parseInt(asked);
  }
}
