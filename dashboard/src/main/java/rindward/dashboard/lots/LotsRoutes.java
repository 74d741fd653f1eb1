package rindward.dashboard.lots;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.ConflictResponse;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import rindward.dashboard.request.JsonBody;
import rindward.dashboard.request.Page;
import rindward.dashboard.request.Replays;
import rindward.dashboard.request.Stretch;
import rindward.dashboard.rooms.ClimateView;
import rindward.dashboard.signin.Access;
import rindward.dashboard.signin.Caller;
import rindward.dashboard.signin.Gate;
import rindward.dashboard.signin.Role;

/** The routes of the lots and lot pages, and of everything said of lots. */
public final class LotsRoutes {
  private static final int PRECONDITION_FAILED = 412;

  private final LotsDesk desk;

  private LotsRoutes(LotsDesk desk) {
    this.desk = desk;
  }

  /** Adds them. */
  public static void add(RoutesConfig routes, LotsDesk desk) {
    LotsRoutes own = new LotsRoutes(desk);
    routes.get("/api/lots", own::lots, Access.READER);
    routes.get("/api/lots/{code}", own::lot, Access.READER);
    routes.get("/api/lots/{code}/air", own::air, Access.READER);
    routes.post("/api/lots/entries", own::say, Access.HELPER);
    routes.put("/api/lots/entries/{id}", own::correct, Access.HELPER);
    routes.post("/api/lots/withdrawals", own::withdraw, Access.HELPER);
  }

  private void lots(Context ctx) {
    String all = ctx.queryParam("all");
    Page page = Page.of(ctx);
    ctx.json(desk.lots("true".equals(all), page.from(), page.size()));
  }

  private void lot(Context ctx) {
    LotView lot = desk.lot(ctx.pathParam("code")).orElseThrow(LotsRoutes::noLot);
    ctx.header("ETag", Versions.tag(lot.lot())).json(lot);
  }

  private void air(Context ctx) {
    Stretch asked = Stretch.of(ctx, desk.now());
    ClimateView air =
        desk.air(ctx.pathParam("code"), asked.from(), asked.to(), Stretch.slots(ctx))
            .orElseThrow(LotsRoutes::noLot);
    ctx.json(air);
  }

  private void say(Context ctx) {
    EntryRequest request = JsonBody.read(ctx, EntryRequest.class);
    LotChange change = change(ctx, at(request));
    SaidView said = kept(() -> desk.say(request.kind(), request.lots(), request.fields(), change));
    Gate.done(ctx, "said of " + String.join(", ", request.lots()) + ": " + request.kind());
    ctx.status(201).json(said);
  }

  private void correct(Context ctx) {
    FieldsRequest request = JsonBody.read(ctx, FieldsRequest.class);
    long entry = entry(ctx.pathParam("id"));
    SaidView said = kept(() -> desk.correct(entry, request.fields(), change(ctx, null)));
    Gate.done(ctx, "corrected entry " + entry);
    ctx.json(said);
  }

  private void withdraw(Context ctx) {
    WithdrawalRequest request = JsonBody.read(ctx, WithdrawalRequest.class);
    SaidView said = kept(() -> desk.withdraw(request.entries(), change(ctx, null)));
    Gate.done(ctx, "took back entries " + request.entries());
    ctx.status(201).json(said);
  }

  private @Nullable Instant at(EntryRequest request) {
    Long ago = request.agoSeconds();
    return ago == null ? request.at() : desk.now().minusSeconds(ago);
  }

  private static LotChange change(Context ctx, @Nullable Instant at) {
    Caller caller = Gate.caller(ctx);
    return new LotChange(
        caller.name(), caller.is(Role.OWNER), Replays.key(ctx), Versions.seen(ctx), at);
  }

  private static long entry(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new NotFoundResponse("There is no entry of that number.");
    }
  }

  private static NotFoundResponse noLot() {
    return new NotFoundResponse("There is no lot of that code.");
  }

  /** Something that the controller may refuse to keep. */
  @FunctionalInterface
  private interface Saying {
    SaidView say() throws LotRefused;
  }

  private static SaidView kept(Saying saying) {
    try {
      return saying.say();
    } catch (LotRefused refused) {
      String sentence = String.valueOf(refused.getMessage());
      throw switch (refused.why()) {
        case MALFORMED -> new BadRequestResponse(sentence);
        case CONTRADICTED -> new ConflictResponse(sentence);
        case STALE -> new HttpResponseException(PRECONDITION_FAILED, sentence);
        case UNKNOWN -> new NotFoundResponse(sentence);
      };
    }
  }
}
