package rindward.hardware;

import java.io.IOException;

/** One probe in a room, in a fruit or outdoors. Called by one bus worker at a time. */
public interface Probe {
  /** Returns the name that the settings give it. */
  String name();

  /**
   * Reads the probe once; may block for as long as its bus takes.
   *
   * @throws IOException in one sentence a grower understands, when there is no trustworthy value
   */
  Reading read() throws IOException;
}
