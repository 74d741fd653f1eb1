package rindward.dashboard;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.dashboard.entrance.WholeRequests;

/**
 * Turns whatever goes wrong into a {@link Problem}: what a handler refused, what it failed at, and
 * what the server turned away before any handler saw it. The cause goes to the log, never to the
 * client.
 */
final class ErrorResponses extends ErrorHandler {

  private static final Logger LOG = LoggerFactory.getLogger(ErrorResponses.class);

  /** The detail of an exception that becomes the header of the same name, in seconds. */
  private static final String RETRY_AFTER = "Retry-After";

  private final ObjectMapper json;

  ErrorResponses(ObjectMapper json) {
    this.json = json;
    setShowStacks(false);
    setShowCauses(false);
  }

  /** Covers everything that a route's handler throws. */
  void add(RoutesConfig routes) {
    routes.exception(
        HttpResponseException.class,
        (e, ctx) -> {
          String wait = e.getDetails().get(RETRY_AFTER);
          if (wait != null) {
            ctx.header(RETRY_AFTER, wait);
          }
          answer(ctx, e.getStatus(), e.getMessage());
        });
    routes.exception(
        Exception.class,
        (e, ctx) -> {
          LOG.error("{} {} failed", ctx.method(), ctx.path(), e);
          answer(ctx, 500, "The dashboard failed to answer; its log says why.");
        });
  }

  private static void answer(Context ctx, int status, @Nullable String detail) {
    ctx.status(status);
    ctx.header("Cache-Control", "no-store");
    ctx.json(Problem.of(status, HttpStatus.getMessage(status), detail));
    ctx.contentType(Problem.MEDIA_TYPE);
  }

  /** Covers what the server refuses by itself, such as a malformed request line. */
  @Override
  protected void generateResponse(
      Request request,
      Response response,
      int code,
      @Nullable String message,
      @Nullable Throwable cause,
      Callback callback)
      throws IOException {
    String why = (String) request.getAttribute(WholeRequests.WHY);
    byte[] body = json.writeValueAsBytes(Problem.of(code, HttpStatus.getMessage(code), why));
    response.setStatus(code);
    response.getHeaders().put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
    response.getHeaders().put("X-Content-Type-Options", "nosniff");
    Content.Sink.write(response, true, ByteBuffer.wrap(body));
    callback.succeeded();
  }
}
