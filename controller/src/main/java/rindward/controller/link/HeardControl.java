package rindward.controller.link;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.nio.ByteBuffer;
import java.nio.channels.SelectionKey;
import java.nio.channels.Selector;
import java.nio.channels.SocketChannel;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Control as a page in another process hears of it, over the one local socket. Control may be
 * stopped, started anew or replaced meanwhile: what it told last stays, and {@link #silence()} says
 * how old that is. {@link #turn} and {@link #close} are for one thread, the rest for any.
 */
public final class HeardControl implements ControlView, AutoCloseable {
  /** Between two tries to reach a control that is not there. */
  private static final long BETWEEN_TRIES_NANOS = 1_000_000_000L;

  private static final long LONGEST_WAIT_MILLIS = 1_000;

  /** More than a hundred rooms need. */
  private static final int LONGEST_LINE = 8_000_000;

  private static final byte[] LOOK = {'\n'};

  private final SocketPlace place;
  private final Duration patience;
  private final LongSupplier nanos;
  private final List<Consumer<ControlReport>> listeners = new CopyOnWriteArrayList<>();
  private final List<Runnable> silenceListeners = new CopyOnWriteArrayList<>();
  private final AtomicBoolean isLookWanted = new AtomicBoolean();
  private final ByteBuffer ear = ByteBuffer.allocate(64 * 1024);
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private volatile @Nullable ControlReport latest;
  private volatile @Nullable Selector selector;
  private volatile String otherVersion = "";
  private @Nullable SocketChannel channel;
  private boolean wasSilent = true;
  private long triedNanos;

  /**
   * @param patience for how long nothing may be heard before that is told
   * @param nanos the monotonic clock of this process
   */
  public HeardControl(SocketPlace place, Duration patience, LongSupplier nanos) {
    this.place = place;
    this.patience = patience;
    this.nanos = nanos;
    this.triedNanos = nanos.getAsLong() - BETWEEN_TRIES_NANOS;
  }

  @Override
  public @Nullable ControlReport latest() {
    return latest;
  }

  @Override
  public @Nullable String silence() {
    if (!otherVersion.isEmpty()) {
      return "Control is another version of this program, " + otherVersion + ": restart the page.";
    }
    ControlReport known = latest;
    if (known == null) {
      return "Control does not answer: nothing is known of how the rooms are now. What is on record"
          + " is shown.";
    }
    long age = nanos.getAsLong() - known.told().nanos();
    if (age <= patience.toNanos()) {
      return null;
    }
    Duration since = Duration.ofNanos(age);
    return "Control has not answered for "
        + (since.toMinutes() < 2 ? since.toSeconds() + " s" : since.toMinutes() + " min")
        + ": the rooms are shown as they were then, and nobody knows how they are now.";
  }

  @Override
  public void lookAtJournal() {
    isLookWanted.set(true);
    Selector open = selector;
    if (open != null) {
      open.wakeup();
    }
  }

  @Override
  public void eachReport(Consumer<ControlReport> listener) {
    listeners.add(listener);
  }

  /** Tells whenever control falls silent, or is heard again. */
  public void eachSilence(Runnable listener) {
    silenceListeners.add(listener);
  }

  /** Waits for news, at most a second, and takes it in. */
  public void turn() throws IOException {
    Selector open = selector;
    if (open == null) {
      open = Selector.open();
      selector = open;
    }
    connect(open);
    say();
    int unused = open.select(LONGEST_WAIT_MILLIS);
    open.selectedKeys().clear();
    hear();
    say();
    boolean isSilent = silence() != null;
    if (isSilent != wasSilent) {
      wasSilent = isSilent;
      silenceListeners.forEach(Runnable::run);
    }
  }

  private void connect(Selector open) throws IOException {
    long now = nanos.getAsLong();
    if (channel != null || now - triedNanos < BETWEEN_TRIES_NANOS) {
      return;
    }
    triedNanos = now;
    SocketChannel next = SocketChannel.open(StandardProtocolFamily.UNIX);
    try {
      boolean unused = next.connect(place.address());
      next.configureBlocking(false);
      next.register(open, SelectionKey.OP_READ);
      line.reset();
      channel = next;
    } catch (IOException notThere) {
      next.close();
    }
  }

  private void say() {
    SocketChannel to = channel;
    if (to != null && isLookWanted.getAndSet(false)) {
      try {
        int unused = to.write(ByteBuffer.wrap(LOOK));
      } catch (IOException gone) {
        hangUp();
      }
    }
  }

  private void hear() {
    SocketChannel from = channel;
    if (from == null) {
      return;
    }
    try {
      ear.clear();
      int bytes = from.read(ear);
      while (bytes > 0) {
        take(bytes);
        ear.clear();
        bytes = from.read(ear);
      }
      if (bytes < 0) {
        hangUp();
      }
    } catch (ReportJson.OtherVersion other) {
      otherVersion = String.valueOf(other.getMessage());
      hangUp();
    } catch (IOException gone) {
      hangUp();
    }
  }

  private void take(int bytes) throws IOException {
    int from = 0;
    for (int i = 0; i < bytes; i++) {
      if (ear.get(i) == '\n') {
        line.write(ear.array(), from, i - from);
        from = i + 1;
        hear(ReportJson.read(line.toByteArray(), line.size()));
        line.reset();
      }
    }
    line.write(ear.array(), from, bytes - from);
    if (line.size() > LONGEST_LINE) {
      throw new IOException("a line of control has no end");
    }
  }

  private void hear(ControlReport report) {
    otherVersion = "";
    ControlReport heard = report.onClock(nanos.getAsLong());
    latest = heard;
    listeners.forEach(listener -> listener.accept(heard));
  }

  private void hangUp() {
    SocketChannel open = channel;
    channel = null;
    line.reset();
    try {
      if (open != null) {
        open.close();
      }
    } catch (IOException nothingToSave) {
      // It is tried again in a moment.
    }
  }

  /** Ends the connection. */
  @Override
  public void close() {
    hangUp();
    Selector open = selector;
    selector = null;
    try {
      if (open != null) {
        open.close();
      }
    } catch (IOException nothingToSave) {
      // The process is about to end.
    }
  }
}
