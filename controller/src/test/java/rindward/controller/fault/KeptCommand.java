package rindward.controller.fault;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import rindward.controller.daemon.OwnBroker;

/** A real broker that keeps a message for whoever comes next. */
final class KeptCommand implements AutoCloseable {
  private final OwnBroker broker;
  private final MqttClient client;
  private final String topic;

  private KeptCommand(OwnBroker broker, MqttClient client, String topic) {
    this.broker = broker;
    this.client = client;
    this.topic = topic;
  }

  /** Starts a broker that keeps {@code message} on a topic. */
  static KeptCommand of(Path folder, String topic, String message) throws Exception {
    OwnBroker broker = new OwnBroker(folder);
    MqttClient client =
        new MqttClient("tcp://127.0.0.1:" + broker.port(), "somebody", new MemoryPersistence());
    Awaitility.await().until(() -> connects(client));
    KeptCommand kept = new KeptCommand(broker, client, topic);
    kept.publish(message);
    return kept;
  }

  int port() {
    return broker.port();
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
      broker.close();
    }
  }
}
