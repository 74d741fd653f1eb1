package rindward.dashboard.entrance;

import java.net.SocketAddress;
import org.eclipse.jetty.io.AbstractEndPoint;
import org.eclipse.jetty.io.Connection;

/**
 * One connection and what it is at: sending a request, waiting for its answer, or taking it. Looked
 * at by {@link Connections}, whose lock guards it.
 */
final class Line {
  private static final long SECOND = 1_000_000_000L;

  /** A whole request takes no longer, head and body. */
  static final long LONGEST_REQUEST = 10 * SECOND;

  /** Who takes an answer more slowly than this has gone. */
  private static final long BYTES_A_SECOND = 500;

  /** A rate is judged after that; a phone far from the shed may stall for a moment. */
  private static final long GRACE = 3 * SECOND;

  /** How long nothing may move while an answer waits to be taken. */
  private static final long LONGEST_STALL = 15 * SECOND;

  private final Connection connection;
  private final Origin origin;
  private State state = State.READING;
  private long since;
  private long bytesBefore;
  private boolean isServed;

  private enum State {
    /** A request is awaited, or its head is on its way. */
    READING,
    /** Its body is on its way. */
    BODY,
    /** It is dealt with and answered. */
    ANSWERING
  }

  Line(Connection connection, Origin origin, long now) {
    this.connection = connection;
    this.origin = origin;
    this.since = now;
  }

  Connection connection() {
    return connection;
  }

  SocketAddress remote() {
    return connection.getEndPoint().getRemoteSocketAddress();
  }

  Origin origin() {
    return origin;
  }

  /** Returns since when nothing but a request is awaited; nobody's work is lost with the oldest. */
  long since() {
    return since;
  }

  boolean isReading() {
    return state == State.READING;
  }

  void bodyBegins(long now) {
    enter(State.BODY, now, connection.getBytesIn());
  }

  void answerBegins(long now) {
    enter(State.ANSWERING, now, connection.getBytesOut());
  }

  void answerEnds(long now) {
    isServed = true;
    enter(State.READING, now, connection.getBytesIn());
  }

  /** Tells whether it has had its time. */
  boolean isTooSlow(long now) {
    long lasted = now - since;
    return switch (state) {
      case READING -> readsTooLong(now, lasted);
      case BODY ->
          lasted > LONGEST_REQUEST
              || (lasted > GRACE
                  && connection.getBytesIn() - bytesBefore < BYTES_A_SECOND * (lasted / SECOND));
      case ANSWERING -> stalls(now, lasted);
    };
  }

  void close() {
    connection.getEndPoint().close();
  }

  /** Between two requests it may rest as long as the server lets it; in one it may not. */
  private boolean readsTooLong(long now, long lasted) {
    if (isServed && connection.getBytesIn() == bytesBefore) {
      since = now;
      return false;
    }
    return lasted > LONGEST_REQUEST;
  }

  private boolean stalls(long now, long lasted) {
    long out = connection.getBytesOut();
    boolean isWaiting =
        connection.getEndPoint() instanceof AbstractEndPoint end
            && end.getWriteFlusher().isPending();
    if (!isWaiting || out - bytesBefore > BYTES_A_SECOND * (LONGEST_STALL / SECOND)) {
      since = now;
      bytesBefore = out;
      return false;
    }
    return lasted > LONGEST_STALL;
  }

  private void enter(State next, long now, long bytes) {
    state = next;
    since = now;
    bytesBefore = bytes;
  }
}
