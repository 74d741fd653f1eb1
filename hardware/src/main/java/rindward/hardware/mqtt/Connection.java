package rindward.hardware.mqtt;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Set;
import javax.net.ssl.SSLSocketFactory;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

/**
 * One attempt at a connection: opened once, never repaired. Paho's own reconnection is off, because
 * after it a client can look connected while messages pile up; nothing is subscribed inside a
 * callback, because that can lock up (Paho issues 985 and 999). Confined to the thread that
 * supervises the broker.
 */
final class Connection {
  private static final long PATIENCE_MILLIS = 10_000;
  private static final int KEEP_ALIVE_SECONDS = 20;
  private static final int MOST_IN_FLIGHT = 200;

  /** At least once: a lost state would stay wrong, and none of our messages harms twice. */
  private static final int QOS = 1;

  private final BrokerSettings settings;
  private final MqttAsyncClient client;

  /** Who hears what comes in. */
  @FunctionalInterface
  interface Listener {
    void arrived(String topic, byte[] payload, boolean isRetained);
  }

  Connection(BrokerSettings settings, Listener listener) throws MqttException {
    this.settings = settings;
    client = new MqttAsyncClient(settings.uri(), settings.clientId(), new MemoryPersistence());
    client.setCallback(
        new MqttCallback() {
          @Override
          public void connectionLost(Throwable cause) {
            // Seen by the supervisor, which asks isOpen().
          }

          @Override
          public void messageArrived(String topic, MqttMessage message) {
            listener.arrived(topic, message.getPayload(), message.isRetained());
          }

          @Override
          public void deliveryComplete(IMqttDeliveryToken token) {
            // The echo tells more.
          }
        });
  }

  void open(Set<String> topics) throws MqttException {
    MqttConnectOptions options = new MqttConnectOptions();
    options.setAutomaticReconnect(false);
    options.setCleanSession(true);
    options.setKeepAliveInterval(KEEP_ALIVE_SECONDS);
    options.setConnectionTimeout((int) (PATIENCE_MILLIS / 1000));
    options.setMaxInflight(MOST_IN_FLIGHT);
    options.setWill(settings.stateTopic(), "offline".getBytes(StandardCharsets.UTF_8), QOS, true);
    if (!settings.user().isEmpty()) {
      options.setUserName(settings.user());
      options.setPassword(settings.password().toCharArray());
    }
    if (settings.authority() != null) {
      options.setSocketFactory(trusting(settings.authority()));
    }
    client.connect(options).waitForCompletion(PATIENCE_MILLIS);
    client.subscribe(settings.echoTopic(), QOS).waitForCompletion(PATIENCE_MILLIS);
    for (String topic : topics) {
      client.subscribe(topic, QOS).waitForCompletion(PATIENCE_MILLIS);
    }
  }

  private static SSLSocketFactory trusting(Path authority) throws MqttException {
    try {
      return OwnAuthority.trusting(authority);
    } catch (IOException e) {
      throw new MqttException(e);
    }
  }

  boolean isOpen() {
    return client.isConnected();
  }

  /** Tells whether another message may be given to the network now. */
  boolean hasRoom() {
    return client.getInFlightMessageCount() < MOST_IN_FLIGHT;
  }

  void publish(String topic, String text, boolean isRetained) throws MqttException {
    var unused = client.publish(topic, text.getBytes(StandardCharsets.UTF_8), QOS, isRetained);
  }

  /** Says that we are going, if that can be said within a second, and lets go. */
  void sayGoodbye(String stateTopic) {
    try {
      if (client.isConnected()) {
        client
            .publish(stateTopic, "offline".getBytes(StandardCharsets.UTF_8), QOS, true)
            .waitForCompletion(1_000);
        client.disconnect(0).waitForCompletion(1_000);
      }
    } catch (MqttException e) {
      // Then the broker says it for us: that is what the last will is for.
    }
    abandon();
  }

  /**
   * Lets go at once, whatever state it is in. The client is not closed as well: that would clear
   * its fields under Paho's own threads, which then end in a NullPointerException, and a client
   * that nobody holds has nothing left to close.
   */
  void abandon() {
    try {
      client.disconnectForcibly(0, 500, false);
    } catch (MqttException e) {
      // It was not connected, which is all that was wanted.
    }
  }
}
