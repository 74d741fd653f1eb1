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

  /** How old a value may be: a probe that fell silent may hold the heat on for as long. */
  static final Kind<Duration> MAX_AGE =
      Kind.duration(Duration.ofSeconds(10), Duration.ofMinutes(15));

  private Network() {}
}
