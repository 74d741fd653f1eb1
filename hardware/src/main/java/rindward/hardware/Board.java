package rindward.hardware;

import java.io.IOException;

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

  /** Switches every relay off and lets go of the hardware; safe to call twice. */
  @Override
  void close();
}
