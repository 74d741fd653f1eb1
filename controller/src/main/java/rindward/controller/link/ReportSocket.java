package rindward.controller.link;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Control's end of the one local socket: tells every report to a few listeners, and hears "look at
 * the journal". Whatever listeners do, it costs control a bounded share of one thread that is none
 * of the control loop's: one that does not take what it is told skips reports and is dropped in the
 * end, one that says too much is dropped at once, and of many that come at once some wait at the
 * door.
 *
 * <p>{@link #tell} is for any thread and waits for nothing; {@link #turn} and {@link #close} are
 * for one.
 */
public final class ReportSocket implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ReportSocket.class);

  static final int MOST_LISTENERS = 4;
  static final int MOST_ARRIVALS_A_SECOND = 20;

  private static final int WAITING_AT_THE_DOOR = 8;
  private static final long SECOND_NANOS = 1_000_000_000L;
  private static final long BETWEEN_LOOKS_NANOS = SECOND_NANOS / 10;

  /** A socket that somebody has taken away is missed so soon. */
  private static final long BETWEEN_CHECKS_NANOS = 10 * SECOND_NANOS;

  private static final long LONGEST_WAIT_MILLIS = 1_000;

  private final SocketPlace place;
  private final Runnable look;
  private final LongSupplier nanos;
  private final AtomicReference<@Nullable ControlReport> untold = new AtomicReference<>();
  private final List<ReportTaker> listeners = new ArrayList<>();
  private volatile @Nullable Selector selector;
  private @Nullable ServerSocketChannel door;
  private byte @Nullable [] newest;
  private boolean isLookWanted;
  private long lookedNanos;
  private long checkedNanos;
  private long arrivalsSinceNanos;
  private int arrivals;

  /**
   * @param look looks at the journal, at most ten times a second; must not wait
   * @param nanos the monotonic clock
   */
  public ReportSocket(SocketPlace place, Runnable look, LongSupplier nanos) {
    this.place = place;
    this.look = look;
    this.nanos = nanos;
    this.lookedNanos = nanos.getAsLong() - SECOND_NANOS;
  }

  /** Leaves a report to be told; of those not told yet only the last one is. */
  public void tell(ControlReport report) {
    untold.set(report);
    Selector open = selector;
    if (open != null) {
      open.wakeup();
    }
  }

  /**
   * Waits for something to do, at most a second, and does it.
   *
   * @throws IOException in one sentence, when there can be no socket
   */
  public void turn() throws IOException {
    Selector open = opened();
    int unused = open.select(pauseMillis());
    long now = nanos.getAsLong();
    for (SelectionKey key : open.selectedKeys()) {
      if (key.isValid() && key.isAcceptable()) {
        arrive(open, now);
      } else if (key.isValid() && key.attachment() instanceof ReportTaker listener) {
        isLookWanted |= listener.hear(now);
        listener.write();
      }
    }
    open.selectedKeys().clear();
    tellNewest(now);
    listeners.removeIf(listener -> listener.isOver(now));
    lookIfWanted(now);
    listenAgain(open, now);
  }

  private Selector opened() throws IOException {
    long now = nanos.getAsLong();
    if (door != null && now - checkedNanos > BETWEEN_CHECKS_NANOS) {
      checkedNanos = now;
      if (!place.isThere()) {
        LOG.warn("The socket {} was taken away; it is made anew", place.path());
        close();
      }
    }
    Selector open = selector;
    if (open != null) {
      return open;
    }
    Selector made = Selector.open();
    try {
      place.clear();
      ServerSocketChannel bound = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
      door = bound;
      bound.bind(place.address(), WAITING_AT_THE_DOOR);
      place.guard();
      bound.configureBlocking(false);
      bound.register(made, SelectionKey.OP_ACCEPT);
      selector = made;
      checkedNanos = now;
      return made;
    } catch (IOException | RuntimeException e) {
      made.close();
      close();
      throw new IOException(
          "the socket " + place.path() + ", by which pages hear of control, cannot be made: " + e,
          e);
    }
  }

  private long pauseMillis() {
    if (isLookWanted) {
      long left = lookedNanos + BETWEEN_LOOKS_NANOS - nanos.getAsLong();
      return Math.max(1, left / 1_000_000);
    }
    return LONGEST_WAIT_MILLIS;
  }

  private void arrive(Selector open, long now) throws IOException {
    ServerSocketChannel bound = door;
    SocketChannel channel = bound == null ? null : bound.accept();
    if (bound == null || channel == null) {
      return;
    }
    if (now - arrivalsSinceNanos > SECOND_NANOS) {
      arrivalsSinceNanos = now;
      arrivals = 0;
    }
    arrivals++;
    if (arrivals >= MOST_ARRIVALS_A_SECOND) {
      bound.keyFor(open).interestOps(0); // Until the second is over.
    }
    if (listeners.size() >= MOST_LISTENERS) {
      channel.close();
      return;
    }
    channel.configureBlocking(false);
    ReportTaker listener =
        new ReportTaker(channel, channel.register(open, SelectionKey.OP_READ), now);
    channel.keyFor(open).attach(listener);
    listeners.add(listener);
    byte[] last = newest;
    if (last != null) {
      listener.offer(ByteBuffer.wrap(last), now);
    }
  }

  private void listenAgain(Selector open, long now) {
    ServerSocketChannel bound = door;
    if (bound != null && now - arrivalsSinceNanos > SECOND_NANOS) {
      bound.keyFor(open).interestOps(SelectionKey.OP_ACCEPT);
    }
  }

  private void tellNewest(long now) {
    ControlReport report = untold.getAndSet(null);
    if (report == null) {
      return;
    }
    byte[] line = ReportJson.write(report);
    newest = line;
    listeners.forEach(listener -> listener.offer(ByteBuffer.wrap(line), now));
  }

  private void lookIfWanted(long now) {
    if (isLookWanted && now - lookedNanos >= BETWEEN_LOOKS_NANOS) {
      isLookWanted = false;
      lookedNanos = now;
      look.run();
    }
  }

  /** Returns how many listen. */
  int listening() {
    return listeners.size();
  }

  /** Lets go of everybody, and takes the socket away. A later turn makes it anew. */
  @Override
  public void close() {
    listeners.forEach(ReportTaker::end);
    listeners.clear();
    try {
      if (door != null) {
        door.close();
        place.clear();
      }
      Selector open = selector;
      if (open != null) {
        open.close();
      }
    } catch (IOException e) {
      LOG.warn("The socket {} did not end cleanly: {}", place.path(), e.toString());
    }
    door = null;
    selector = null;
  }
}
