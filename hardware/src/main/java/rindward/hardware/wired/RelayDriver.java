package rindward.hardware.wired;

import java.io.IOException;
import rindward.hardware.Relay;

/** What stands at the other end of an output, and how it is reached. */
public interface RelayDriver {
  /** Returns the word used in settings. */
  String word();

  /** Returns where the part is, as a person would look for it: "GPIO 17, on when high". */
  String place();

  /** Tells whether it needs a broker. */
  default boolean needsBroker() {
    return false;
  }

  /**
   * Opens the relay, off.
   *
   * @throws IOException in one sentence, when it cannot be opened
   */
  Relay openOff(String relay, Parts parts) throws IOException;
}
