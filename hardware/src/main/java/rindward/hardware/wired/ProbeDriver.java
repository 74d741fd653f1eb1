package rindward.hardware.wired;

import java.io.IOException;
import java.util.Optional;
import rindward.hardware.Probe;
import rindward.hardware.sensor.SensorFamily;

/** What stands at the other end of a probe, and how it is reached. Two that are equal are one. */
public interface ProbeDriver {
  /** Returns the word used in settings. */
  String word();

  /** Returns where the part is, as a person would look for it: "0x44 on I2C bus 1". */
  String place();

  /** Returns what it shares with others: the probes of one bus are read one after the other. */
  String bus();

  /** Returns the family whose usual accuracy holds when nobody states one. */
  default Optional<SensorFamily> family() {
    return Optional.empty();
  }

  /** Tells whether it may give a humidity beside the temperature. */
  boolean hasHumidity();

  /** Tells whether it needs a broker. */
  default boolean needsBroker() {
    return false;
  }

  /**
   * Opens the probe; whether the part answers shows at the first reading.
   *
   * @throws IOException in one sentence, when it cannot be opened
   */
  Probe open(String probe, Parts parts) throws IOException;
}
