package rindward.dashboard.shed;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import rindward.dashboard.signin.Access;

/**
 * The routes to what the shed hands over as files. A copy of everything holds the passwords' hashes
 * too, and is the owner's.
 */
public final class RecordRoutes {
  private final RecordDesk desk;

  private RecordRoutes(RecordDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, RecordDesk desk) {
    RecordRoutes own = new RecordRoutes(desk);
    routes.get("/api/record", ctx -> ctx.json(desk.record()), Access.READER);
    routes.get("/api/record/lots.csv", own::lots, Access.READER);
    routes.get("/api/record/copy.db", own::copy, Access.OWNER);
  }

  private void lots(Context ctx) {
    attach(ctx, "lots.csv");
    ctx.contentType("text/csv; charset=utf-8").result(desk.lots());
  }

  private void copy(Context ctx) throws IOException {
    var copy =
        desk.copy()
            .orElseThrow(() -> new NotFoundResponse("There is no copy yet; one is made at night."));
    attach(ctx, "shed-copy.db");
    ctx.contentType("application/vnd.sqlite3").result(copy);
  }

  private static void attach(Context ctx, String name) {
    ctx.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
  }
}
