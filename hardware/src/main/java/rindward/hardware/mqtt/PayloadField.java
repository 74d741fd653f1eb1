package rindward.hardware.mqtt;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;

/**
 * Where in a payload a value stands: a JSON Pointer (RFC 6901) such as {@code /air/temperature}, or
 * empty when the payload is the value itself.
 */
public record PayloadField(String pointer) {
  /** The payload is the value. */
  public static final PayloadField WHOLE = new PayloadField("");

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

  public PayloadField {
    if (!pointer.isEmpty() && !pointer.startsWith("/")) {
      throw new IllegalArgumentException(
          "field was '" + pointer + "' but it must be empty or a JSON Pointer like /temperature");
    }
  }

  /**
   * Returns the value as text.
   *
   * @throws IOException when it is not there, in one sentence that begins with "its message"
   */
  String text(String payload) throws IOException {
    if (pointer.isEmpty()) {
      return payload.strip();
    }
    JsonNode node;
    try {
      node = JSON.readTree(payload).at(JsonPointer.compile(pointer));
    } catch (JsonProcessingException e) {
      throw new IOException("its message was '" + shown(payload) + "' but it must be JSON", e);
    }
    if (!node.isValueNode() || node.isNull()) {
      throw new IOException("its message was '" + shown(payload) + "' but it must have " + pointer);
    }
    return node.asText();
  }

  /**
   * Returns the value as a finite number.
   *
   * @throws IOException when it is none
   */
  double number(String payload) throws IOException {
    String text = text(payload);
    try {
      double value = Double.parseDouble(text);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException e) {
      // Told below, like a number that is not finite.
    }
    throw new IOException(
        "its value was '"
            + shown(text)
            + "' but it must be a number"
            + (pointer.isEmpty() ? "" : " at " + pointer));
  }

  private static String shown(String text) {
    return text.length() > 80 ? text.substring(0, 80) + "..." : text;
  }
}
