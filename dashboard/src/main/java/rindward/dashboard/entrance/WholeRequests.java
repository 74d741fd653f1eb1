package rindward.dashboard.entrance;

import java.net.SocketAddress;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.jspecify.annotations.Nullable;

/**
 * Lets a request in when all of it is there: its body is awaited without holding a thread, and one
 * that is too long is refused, the rest of it unused. Tells {@link Connections} what each
 * connection is at.
 */
public final class WholeRequests extends Handler.Wrapper {
  /** The attribute of a refused request that says why, in one sentence. */
  public static final String WHY = "rindward.why";

  private static final int MOST_FIELDS = 60;

  private final Connections connections;
  private final int mostBytes;

  /**
   * @param mostBytes of a body
   */
  public WholeRequests(Connections connections, int mostBytes) {
    this.connections = connections;
    this.mostBytes = mostBytes;
  }

  @Override
  public boolean handle(Request request, Response response, Callback callback) throws Exception {
    SocketAddress remote = request.getConnectionMetaData().getRemoteSocketAddress();
    connections.bodyBegins(remote);
    Request.addCompletionListener(request, failure -> connections.answerEnds(remote));
    HttpField length = request.getHeaders().getField(HttpHeader.CONTENT_LENGTH);
    if (request.getHeaders().size() > MOST_FIELDS) {
      request.setAttribute(WHY, "There may be at most " + MOST_FIELDS + " header fields.");
      refuse(request, response, callback, HttpStatus.REQUEST_HEADER_FIELDS_TOO_LARGE_431);
    } else if (length != null && length.getLongValue() > mostBytes) {
      refuseBody(request, response, callback, mostBytes);
    } else if (hasBody(request, length)) {
      new Body(request, response, callback, mostBytes, this::answer).run();
    } else {
      return answer(request, response, callback);
    }
    return true;
  }

  private boolean answer(Request request, Response response, Callback callback) throws Exception {
    connections.answerBegins(request.getConnectionMetaData().getRemoteSocketAddress());
    return super.handle(request, response, callback);
  }

  private static boolean hasBody(Request request, @Nullable HttpField length) {
    return request.getHeaders().contains(HttpHeader.TRANSFER_ENCODING)
        || (length != null && length.getLongValue() > 0);
  }

  /** Refuses a body that is too long, the rest of it unread. */
  static void refuseBody(Request request, Response response, Callback callback, int mostBytes) {
    request.setAttribute(WHY, "The body must be at most " + mostBytes + " bytes.");
    refuse(request, response, callback, HttpStatus.PAYLOAD_TOO_LARGE_413);
  }

  private static void refuse(Request request, Response response, Callback callback, int status) {
    response.getHeaders().put(HttpHeader.CONNECTION, "close");
    HeardOut.of(request, () -> Response.writeError(request, response, callback, status));
  }
}
