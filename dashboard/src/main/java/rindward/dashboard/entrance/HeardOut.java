package rindward.dashboard.entrance;

import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.util.thread.Scheduler;
import org.jspecify.annotations.Nullable;

/**
 * Hears out a request that is refused before it is told so. To close a connection on which
 * something still arrives throws the answer away with it (RFC 9112, section 9.6), and who sent a
 * little too much would never read why. What comes is dropped, within bounds of bytes and time,
 * without holding a thread.
 */
final class HeardOut implements Runnable {
  /** Whoever tells of more than this is refused at once. */
  static final int MOST_BYTES = 1 << 20;

  static final long MOST_MILLIS = 2_000;

  private final Request request;
  private final Runnable answer;
  private Scheduler.@Nullable Task givesUp;
  private long bytes;
  private boolean isOver;

  private HeardOut(Request request, Runnable answer) {
    this.request = request;
    this.answer = answer;
  }

  /**
   * Begins to hear a request out.
   *
   * @param answer refuses it; run once
   */
  static void of(Request request, Runnable answer) {
    HeardOut heard = new HeardOut(request, answer);
    if (heard.isWorthIt()) {
      heard.begin();
    } else {
      heard.end();
    }
  }

  private synchronized void begin() {
    Scheduler clock = request.getComponents().getScheduler();
    givesUp = clock.schedule(this::end, MOST_MILLIS, TimeUnit.MILLISECONDS);
    run();
  }

  @Override
  public synchronized void run() {
    while (!isOver) {
      Content.Chunk chunk = request.read();
      if (chunk == null) {
        request.demand(this);
        return;
      }
      boolean isLast = chunk.isLast() || Content.Chunk.isFailure(chunk);
      bytes += chunk.remaining();
      chunk.release();
      if (isLast || bytes > MOST_BYTES) {
        end();
      }
    }
  }

  /** A client that asks first has sent nothing yet, and will not when it is told no. */
  private boolean isWorthIt() {
    HttpField length = request.getHeaders().getField(HttpHeader.CONTENT_LENGTH);
    return !request.getHeaders().contains(HttpHeader.EXPECT)
        && (length == null || length.getLongValue() <= MOST_BYTES);
  }

  private synchronized void end() {
    if (!isOver) {
      isOver = true;
      if (givesUp != null) {
        givesUp.cancel();
      }
      answer.run();
    }
  }
}
