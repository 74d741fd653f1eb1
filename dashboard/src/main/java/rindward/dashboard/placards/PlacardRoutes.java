package rindward.dashboard.placards;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.ServiceUnavailableResponse;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeoutException;
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
    byte[] jpeg = bytes(picture);
    ctx.future(
        () ->
            answer(jpeg)
                .thenAccept(says -> ctx.json(new SquaresView(says)))
                .exceptionally(
                    failure -> {
                      throw refusal(failure);
                    }));
  }

  private CompletableFuture<List<String>> answer(byte[] jpeg) {
    try {
      return reader.read(jpeg);
    } catch (RejectedExecutionException tooMany) {
      return CompletableFuture.failedFuture(tooMany);
    }
  }

  private static byte[] bytes(PictureRequest picture) {
    try {
      return picture.bytes();
    } catch (IllegalArgumentException refused) {
      throw new BadRequestResponse(String.valueOf(refused.getMessage()));
    }
  }

  private static RuntimeException refusal(Throwable failure) {
    Throwable cause = failure instanceof CompletionException ? failure.getCause() : failure;
    if (cause instanceof IllegalArgumentException refused) {
      return new BadRequestResponse(String.valueOf(refused.getMessage()));
    }
    if (cause instanceof RejectedExecutionException || cause instanceof TimeoutException) {
      return new ServiceUnavailableResponse(
          "Too many pictures are sent at once; try again in a moment.");
    }
    return new CompletionException(cause);
  }
}
