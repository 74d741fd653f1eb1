package rindward.hardware;

import java.io.IOException;
import java.time.Duration;
import java.util.OptionalInt;

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

  /**
   * Returns how old the value was that the last {@link #read} gave. A probe that is asked measures
   * then and there; one that publishes by itself gives its latest.
   */
  default Duration age() {
    return Duration.ZERO;
  }

  /**
   * Returns how old its last value may be and still be used. Short for a probe that is asked at
   * every tick: with the longest tick of 15 s, whoever relies on it knows within 30 s.
   */
  default Duration believedFor() {
    return Duration.ofSeconds(20);
  }

  /**
   * Returns the charge of its battery in thousandths of a percent, as it last said; empty for a
   * probe that has none or does not tell. Any thread; never waits.
   */
  default OptionalInt batteryMilliPct() {
    return OptionalInt.empty();
  }
}
