package rindward.dashboard.entrance;

import java.net.SocketAddress;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import org.eclipse.jetty.io.Connection;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Bounds how many connections there are, in all and from one origin, and ends those that are too
 * slow. A part is kept for the origins of people who have signed in. Where there is no place left,
 * of all or of one origin, whoever has waited longest there without a request loses theirs. For any
 * thread.
 */
public final class Connections implements Connection.Listener {
  /** Each costs some tens of kilobytes, and the program has 64 MB. */
  static final int MOST = 96;

  /** The rest is for the origins of people who have signed in. */
  static final int MOST_OF_STRANGERS = 72;

  /** A browser opens six. */
  static final int MOST_OF_A_STRANGER = 16;

  static final int MOST_OF_ONE_KNOWN = 48;

  private static final int MOST_KNOWN = 200;
  private static final long LOG_PAUSE = 60_000_000_000L;
  private static final Logger LOG = LoggerFactory.getLogger(Connections.class);

  private final LongSupplier nanos;
  private final Map<SocketAddress, Line> lines = new HashMap<>();
  private final Map<Origin, Integer> counts = new HashMap<>();
  private final Set<Origin> known =
      Collections.newSetFromMap(
          new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Origin, Boolean> eldest) {
              return size() > MOST_KNOWN;
            }
          });
  private long turnedAway;
  private long loggedAt;

  /**
   * @param nanos a clock that never jumps
   */
  public Connections(LongSupplier nanos) {
    this.nanos = nanos;
    this.loggedAt = nanos.getAsLong() - LOG_PAUSE;
  }

  /** Remembers that somebody who has signed in comes from this address. */
  public synchronized void know(String address) {
    known.add(Origin.of(address));
  }

  /** Tells whether somebody who has signed in came from there. */
  synchronized boolean isKnown(Origin origin) {
    return known.contains(origin);
  }

  @Override
  public void onOpened(Connection connection) {
    Line line;
    Optional<Line> loses;
    synchronized (this) {
      SocketAddress remote = connection.getEndPoint().getRemoteSocketAddress();
      if (lines.containsKey(remote)) {
        return; // The inner part of one that is encrypted.
      }
      line = new Line(connection, Origin.of(remote), nanos.getAsLong());
      loses = whoLosesTo(line);
      loses.ifPresent(this::forget);
      if (!loses.equals(Optional.of(line))) {
        lines.put(remote, line);
        counts.merge(line.origin(), 1, Integer::sum);
      }
    }
    loses.ifPresent(other -> end(other, "there were too many"));
  }

  @Override
  public synchronized void onClosed(Connection connection) {
    line(connection.getEndPoint().getRemoteSocketAddress())
        .filter(line -> line.connection() == connection)
        .ifPresent(this::forget);
  }

  /** Ends what is too slow; to be called about once a second. */
  public void look() {
    List<Line> slow;
    synchronized (this) {
      long now = nanos.getAsLong();
      slow = lines.values().stream().filter(line -> line.isTooSlow(now)).toList();
      slow.forEach(this::forget);
    }
    slow.forEach(line -> end(line, "it was too slow"));
  }

  /** Returns how many there are. */
  synchronized int size() {
    return lines.size();
  }

  synchronized void bodyBegins(SocketAddress remote) {
    line(remote).ifPresent(line -> line.bodyBegins(nanos.getAsLong()));
  }

  synchronized void answerBegins(SocketAddress remote) {
    line(remote).ifPresent(line -> line.answerBegins(nanos.getAsLong()));
  }

  synchronized void answerEnds(SocketAddress remote) {
    line(remote).ifPresent(line -> line.answerEnds(nanos.getAsLong()));
  }

  private Optional<Line> line(SocketAddress remote) {
    return Optional.ofNullable(lines.get(remote));
  }

  /** Returns whose place is taken away: nobody's, that of another, or of the new one itself. */
  private Optional<Line> whoLosesTo(Line line) {
    boolean isKnown = known.contains(line.origin());
    int own = counts.getOrDefault(line.origin(), 0);
    if (own >= (isKnown ? MOST_OF_ONE_KNOWN : MOST_OF_A_STRANGER)) {
      return Optional.of(longestWaiting(other -> other.origin().equals(line.origin()), line));
    }
    long strangers = lines.values().stream().filter(this::isStranger).count();
    boolean hasPlace = lines.size() < MOST && (isKnown || strangers < MOST_OF_STRANGERS);
    return hasPlace ? Optional.empty() : Optional.of(longestWaiting(this::isStranger, line));
  }

  private Line longestWaiting(Predicate<Line> among, Line otherwise) {
    return lines.values().stream()
        .filter(line -> line.isReading() && among.test(line))
        .min(Comparator.comparing(Line::since))
        .orElse(otherwise);
  }

  private void forget(Line line) {
    if (lines.remove(line.remote(), line)) {
      counts.computeIfPresent(line.origin(), (origin, n) -> n == 1 ? null : n - 1);
    }
  }

  private boolean isStranger(Line line) {
    return !known.contains(line.origin());
  }

  private void end(Line line, String why) {
    line.close();
    note(line, why);
  }

  /** One line a minute says enough of a flood. */
  private synchronized void note(Line line, String why) {
    turnedAway++;
    long now = nanos.getAsLong();
    if (now - loggedAt >= LOG_PAUSE) {
      LOG.info(
          "Connections ended so far: {}; the last from {}, {}",
          turnedAway,
          line.origin().word(),
          why);
      loggedAt = now;
    }
  }
}
