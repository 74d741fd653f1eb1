package rindward.controller.settings;

import java.time.Duration;
import rindward.hardware.mqtt.PayloadField;

/** What the keys of parts behind a broker may hold. */
final class Network {
  /** The name of one topic. */
  static final Kind<String> TOPIC =
      Kind.pattern("[^+#\\x00]{1,1000}", "be the name of one topic, without '+' and '#'");

  /** A place in a message. */
  static final Kind<PayloadField> FIELD =
      new Kind<>(
          "be a JSON Pointer, as \"/temperature\"",
          PayloadField.WHOLE,
          value ->
              value instanceof String text && text.startsWith("/") ? new PayloadField(text) : null);

  /**
   * How old a value may be in a room that is heated by it: heat ends within 30 s of the last value
   * that can be trusted, so such a probe has to publish every 10 s or so.
   */
  static final Kind<Duration> MAX_AGE_OF_HEAT =
      Kind.duration(Duration.ofSeconds(10), Duration.ofSeconds(20));

  /** How old another value may be. */
  static final Kind<Duration> MAX_AGE =
      Kind.duration(Duration.ofSeconds(10), Duration.ofMinutes(15));

  private Network() {}
}
