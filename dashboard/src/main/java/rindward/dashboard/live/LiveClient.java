package rindward.dashboard.live;

import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;

/**
 * One open stream, written without blocking: bytes go out only while the container says that it can
 * take them, and at most one frame waits. A newer frame replaces the one that waits, so a slow
 * client skips to the latest. A client that takes nothing at all runs into the connection's idle
 * time-out, which ends it.
 *
 * <p>Guarded by its own lock: the hub's worker offers, the container's threads call back.
 */
final class LiveClient implements WriteListener {

  private final ServletOutputStream out;
  private final CompletableFuture<@Nullable Void> ended = new CompletableFuture<>();

  private byte @Nullable [] next;
  private boolean writable;
  private boolean unflushed = true; // the headers, so that the page knows at once that it is heard

  LiveClient(ServletOutputStream out) {
    this.out = out;
  }

  /** Completes when the stream is over, whoever ended it. */
  CompletableFuture<@Nullable Void> ended() {
    return ended;
  }

  /** Asks the container to call back as soon as it takes bytes. The request must be async. */
  void start() {
    out.setWriteListener(this);
  }

  /** Sends the frame now if possible; otherwise it replaces whatever frame was waiting. */
  synchronized void offer(byte[] frame) {
    next = frame;
    drain();
  }

  /** Sends the frame only if nothing else is waiting; no news need not queue behind news. */
  synchronized void offerIfIdle(byte[] frame) {
    if (writable && next == null) {
      next = frame;
      drain();
    }
  }

  void end() {
    ended.complete(null);
  }

  @Override
  public synchronized void onWritePossible() {
    writable = true;
    drain();
  }

  @Override
  public void onError(Throwable failure) {
    end();
  }

  private void drain() {
    try {
      while (writable && !ended.isDone() && (next != null || unflushed)) {
        writable = out.isReady();
        if (writable) {
          step();
        }
      }
    } catch (IOException | IllegalStateException clientHasGone) {
      end();
    }
  }

  /** Writes one frame, or flushes the one before. Each needs its own word from the container. */
  private void step() throws IOException {
    byte[] frame = next;
    if (unflushed) {
      unflushed = false;
      out.flush();
    } else if (frame != null) {
      next = null;
      unflushed = true;
      out.write(frame);
    }
  }
}
