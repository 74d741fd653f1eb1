package rindward.hardware.mqtt;

import java.nio.charset.StandardCharsets;

/** What a topic may be that is written to or read from, after MQTT 5.0 section 4.7. */
final class Topics {
  private static final int MOST_BYTES = 65_535;

  private Topics() {}

  /**
   * Refuses a name that no message can have.
   *
   * @throws IllegalArgumentException in one sentence
   */
  static void check(String topic) {
    if (topic.isEmpty()
        || topic.indexOf('+') >= 0
        || topic.indexOf('#') >= 0
        || topic.indexOf('\0') >= 0
        || topic.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      throw new IllegalArgumentException(
          "topic was '" + topic + "' but it must be a name of its own, without '+' and '#'");
    }
  }
}
