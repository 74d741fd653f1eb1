package rindward.hardware;

import java.io.IOException;
import java.util.concurrent.Executor;

/**
 * Opens the probes and relays that the settings name, by name. Everything is off when it opens, and
 * off again after {@link #close()}.
 */
public interface Board extends AutoCloseable {
  /**
   * Opens a probe.
   *
   * @throws IOException when there is none of that name, or it cannot be opened
   */
  Probe probe(String name) throws IOException;

  /**
   * Opens a relay, off.
   *
   * @throws IOException when there is none of that name, or it cannot be opened
   */
  Relay relay(String name) throws IOException;

  /**
   * Has whatever runs by itself on this board take its turns through {@code supervisor}, which does
   * each in place and keeps what it throws. A board on which nothing runs by itself has none.
   */
  default void superviseBy(Executor supervisor) {}

  /** Switches every relay off and lets go of the hardware; safe to call twice. */
  @Override
  void close();
}
