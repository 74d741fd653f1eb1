package rindward.hardware;

import java.io.IOException;

/**
 * One switched output. <b>Hazard:</b> behind it may stand a heater. Every driver opens it off and
 * leaves it off when it is closed.
 */
public interface Relay {
  /** Returns the name that the settings give it. */
  String name();

  /**
   * Switches the output; calling it again with the same value is harmless.
   *
   * @throws IOException when it is not certain that the output has the commanded state
   */
  void set(boolean on) throws IOException;
}
