package rindward.dashboard.rooms;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import rindward.dashboard.request.Stretch;
import rindward.dashboard.signin.Access;

/** The routes of the room page: its air over time, what happened there, and every sample as CSV. */
public final class ClimateRoutes {
  private final ClimateDesk desk;

  private ClimateRoutes(ClimateDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, ClimateDesk desk) {
    ClimateRoutes own = new ClimateRoutes(desk);
    routes.get("/api/rooms/{room}/climate", own::climate, Access.READER);
    routes.get("/api/rooms/{room}/switching", own::switching, Access.READER);
    routes.get("/api/rooms/{room}/marks", own::marks, Access.READER);
    routes.get("/api/rooms/{room}/samples.csv", own::samples, Access.READER);
  }

  private void climate(Context ctx) {
    Stretch asked = stretch(ctx);
    boolean outdoors = "true".equals(ctx.queryParam("outdoors"));
    ctx.json(desk.climate(room(ctx), asked.from(), asked.to(), Stretch.slots(ctx), outdoors));
  }

  private void switching(Context ctx) {
    Stretch asked = stretch(ctx);
    ctx.json(desk.switching(room(ctx), asked.from(), asked.to(), Stretch.slots(ctx)));
  }

  private void marks(Context ctx) {
    Stretch asked = stretch(ctx);
    ctx.json(desk.marks(room(ctx), asked.from(), asked.to()));
  }

  /** Written as it is read: a season of samples never stands in memory. */
  private void samples(Context ctx) throws IOException {
    Stretch asked = stretch(ctx);
    String room = room(ctx);
    String name = room.replaceAll("[^A-Za-z0-9_-]+", "-");
    ctx.contentType("text/csv; charset=utf-8");
    ctx.header(
        "Content-Disposition",
        "attachment; filename=\"%s-%s.csv\""
            .formatted(name, asked.from().toString().substring(0, 10)));
    Writer out =
        new BufferedWriter(new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8));
    out.write("time,temperature_C,relative_humidity_percent\r\n");
    desk.samples(room, asked.from(), asked.to(), (at, c, percent) -> write(out, at, c, percent));
    out.flush();
  }

  private static void write(Writer out, long atMillis, double temperatureC, double humidityPct) {
    try {
      out.append(Instant.ofEpochMilli(atMillis).toString())
          .append(',')
          .append(Double.isNaN(temperatureC) ? "" : Double.toString(temperatureC))
          .append(',')
          .append(Double.isNaN(humidityPct) ? "" : Double.toString(humidityPct))
          .append("\r\n");
    } catch (IOException clientHasGone) {
      throw new UncheckedIOException(clientHasGone);
    }
  }

  private Stretch stretch(Context ctx) {
    return Stretch.of(ctx, desk.now());
  }

  private String room(Context ctx) {
    String room = ctx.pathParam("room");
    if (!desk.knows(room)) {
      throw new NotFoundResponse("There is no room of that name.");
    }
    return room;
  }
}
