package rindward.dashboard.entrance;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpStatus;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.content.ByteBufferContentSource;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.BufferUtil;
import org.eclipse.jetty.util.Callback;

/**
 * The body of one request while it arrives: runs when something is there, and holds no thread until
 * then. What arrives is copied: a crumb that was kept where it came in would keep a whole buffer.
 */
final class Body implements Runnable {
  private final Request request;
  private final Response response;
  private final Callback callback;
  private final int mostBytes;
  private final Next next;
  private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

  /** Deals with a request whose body is there. */
  @FunctionalInterface
  interface Next {
    boolean handle(Request request, Response response, Callback callback) throws Exception;
  }

  Body(Request request, Response response, Callback callback, int mostBytes, Next next) {
    this.request = request;
    this.response = response;
    this.callback = callback;
    this.mostBytes = mostBytes;
    this.next = next;
  }

  @Override
  public void run() {
    while (true) {
      Content.Chunk chunk = request.read();
      if (chunk == null) {
        request.demand(this);
        return;
      }
      if (Content.Chunk.isFailure(chunk)) {
        callback.failed(chunk.getFailure());
        return;
      }
      take(chunk);
      if (bytes.size() > mostBytes) {
        WholeRequests.refuseBody(request, response, callback, mostBytes);
        return;
      }
      if (chunk.isLast()) {
        handOn();
        return;
      }
    }
  }

  private void take(Content.Chunk chunk) {
    byte[] arrived = BufferUtil.toArray(chunk.getByteBuffer());
    bytes.write(arrived, 0, arrived.length);
    chunk.release();
  }

  private void handOn() {
    try {
      if (!next.handle(new Arrived(request, bytes.toByteArray()), response, callback)) {
        Response.writeError(request, response, callback, HttpStatus.NOT_FOUND_404);
      }
    } catch (Throwable e) {
      Response.writeError(request, response, callback, e);
    }
  }

  /** The request, whose body lies in memory. */
  private static final class Arrived extends Request.Wrapper {
    private final Content.Source body;
    private final long length;

    Arrived(Request request, byte[] body) {
      super(request);
      this.body = new ByteBufferContentSource(ByteBuffer.wrap(body));
      this.length = body.length;
    }

    @Override
    public long getLength() {
      return length;
    }

    @Override
    public Content.Chunk read() {
      return body.read();
    }

    @Override
    public void demand(Runnable demandCallback) {
      body.demand(demandCallback);
    }

    @Override
    public void fail(Throwable failure) {
      body.fail(failure);
      super.fail(failure);
    }
  }
}
