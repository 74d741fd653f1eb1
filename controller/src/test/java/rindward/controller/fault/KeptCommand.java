package rindward.controller.fault;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.jspecify.annotations.Nullable;

/**
 * A real broker that keeps a message for whoever comes next. Where the program is missing the test
 * is skipped, but fails with {@code CI=true}.
 */
final class KeptCommand implements AutoCloseable {
  private static final List<Path> PLACES =
      List.of(Path.of("/usr/sbin/mosquitto"), Path.of("/usr/bin/mosquitto"));

  private final Process process;
  private final MqttClient client;
  private final int port;
  private final String topic;

  private KeptCommand(Process process, MqttClient client, int port, String topic) {
    this.process = process;
    this.client = client;
    this.port = port;
    this.topic = topic;
  }

  /** Starts a broker that keeps {@code message} on a topic. */
  static KeptCommand of(Path folder, String topic, String message) throws Exception {
    @Nullable Path program = PLACES.stream().filter(Files::isExecutable).findFirst().orElse(null);
    if (program == null) {
      if ("true".equals(System.getenv("CI"))) {
        throw new AssertionError("mosquitto is not installed");
      }
      assumeTrue(false, "mosquitto is not installed");
    }
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Path file =
        Files.writeString(
            folder.resolve("broker.conf"),
            "listener " + port + " 127.0.0.1\nallow_anonymous true\n");
    Process process =
        new ProcessBuilder(program.toString(), "-c", file.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("broker.log").toFile())
            .start();
    MqttClient client =
        new MqttClient("tcp://127.0.0.1:" + port, "somebody", new MemoryPersistence());
    Awaitility.await().until(() -> connects(client));
    KeptCommand kept = new KeptCommand(process, client, port, topic);
    kept.publish(message);
    return kept;
  }

  int port() {
    return port;
  }

  /** Deletes the message, as an empty one does. */
  void delete() throws MqttException {
    publish("");
  }

  private void publish(String message) throws MqttException {
    client.publish(topic, message.getBytes(StandardCharsets.UTF_8), 1, true);
  }

  private static boolean connects(MqttClient client) {
    try {
      client.connect();
      return true;
    } catch (MqttException e) {
      return false;
    }
  }

  @Override
  public void close() throws IOException {
    try {
      client.disconnect();
      client.close();
    } catch (MqttException e) {
      throw new IOException(e);
    } finally {
      process.destroyForcibly();
    }
  }
}
