package rindward.dashboard.entrance;

import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.handler.ThreadLimitHandler;

/** Gives each origin so many threads at a time and no more; the rest of its requests wait. */
public final class ThreadShare extends ThreadLimitHandler {
  private static final int OF_A_STRANGER = 3;
  private static final int OF_ONE_KNOWN = 6;

  private final Connections connections;

  /** Asks who is known. */
  public ThreadShare(Connections connections) {
    super(null, false);
    this.connections = connections;
  }

  @Override
  protected String getRemoteIP(Request request) {
    return Origin.of(request.getConnectionMetaData().getRemoteSocketAddress()).word();
  }

  @Override
  protected int getThreadLimit(String origin) {
    return connections.isKnown(new Origin(origin)) ? OF_ONE_KNOWN : OF_A_STRANGER;
  }
}
