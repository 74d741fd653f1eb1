package rindward.controller.notice;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.Map;
import rindward.hardware.mqtt.Broker;

/**
 * Sends a notice to the broker as JSON ({@code person}, {@code subject}, {@code text}) under {@code
 * notices/<person>}, not retained: a notice is for whoever is there now.
 */
public final class MqttChannel implements Channel {
  private static final Duration VALID = Duration.ofMinutes(1);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String name;
  private final Broker broker;

  public MqttChannel(String name, Broker broker) {
    this.name = name;
    this.broker = broker;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void send(Notice notice) throws IOException {
    if (!broker.trouble().isEmpty()) {
      throw new IOException(broker.trouble());
    }
    String word = notice.person().replaceAll("[/+#\\s\\x00]+", "-");
    broker.command(
        broker.topic("notices/" + word),
        JSON.writeValueAsString(
            Map.of("person", notice.person(), "subject", notice.subject(), "text", notice.text())),
        VALID.toNanos());
  }
}
