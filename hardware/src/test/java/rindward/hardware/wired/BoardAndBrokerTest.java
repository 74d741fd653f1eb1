package rindward.hardware.wired;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.hardware.mqtt.BrokerSettings;
import rindward.hardware.mqtt.Mosquitto;
import rindward.hardware.mqtt.NetworkRelaySettings;
import rindward.hardware.mqtt.PayloadField;
import rindward.hardware.pi4j.GpioLines;
import rindward.hardware.wired.WiredBoard.Output;

/** A board with a relay behind a real broker. */
class BoardAndBrokerTest {
  @TempDir private Path folder;

  @Test
  void relayHearsOff_whenTheBoardOpens_andWhenItCloses() throws IOException, MqttException {
    try (Mosquitto mosquitto = Mosquitto.open(folder)) {
      mosquitto.start();
      List<String> heard = new CopyOnWriteArrayList<>();
      MqttClient device = new MqttClient(mosquitto.uri(), "device", new MemoryPersistence());
      device.connect();
      device.subscribe(
          "heater/command",
          (topic, message) -> heard.add(new String(message.getPayload(), StandardCharsets.UTF_8)));

      WiredBoard board = board(mosquitto.uri());
      assertThat(board.sayAll(Duration.ofSeconds(20))).isTrue();
      Awaitility.await().untilAsserted(() -> assertThat(heard).containsExactly("OFF"));

      board.relay("heater").set(true);
      assertThat(board.sayAll(Duration.ofSeconds(20))).isTrue();
      Awaitility.await().untilAsserted(() -> assertThat(heard).containsExactly("OFF", "ON"));

      board.close();
      Awaitility.await().untilAsserted(() -> assertThat(heard).containsExactly("OFF", "ON", "OFF"));
      device.disconnectForcibly(0, 100, false);
      device.close(true);
    }
  }

  @Test
  void sayAll_withoutABroker_givesUpInTime_andSaysWhy() throws IOException {
    try (WiredBoard board = board("tcp://127.0.0.1:1")) {
      assertThat(board.sayAll(Duration.ofSeconds(2))).isFalse();
      assertThat(board.brokerTrouble()).contains("The broker");
    }
  }

  private WiredBoard board(String uri) throws IOException {
    LinuxMachine machine =
        new LinuxMachine(folder, System::nanoTime, () -> Instant.EPOCH, GpioLines::open);
    NetworkRelayDriver heater =
        new NetworkRelayDriver(
            new NetworkRelaySettings(
                "heater",
                "heater/command",
                "ON",
                "OFF",
                "heater/state",
                PayloadField.WHOLE,
                Duration.ofMinutes(5)));
    return WiredBoard.open(
        machine,
        new BrokerSettings(uri, "shed", "", "", "shed"),
        List.of(new Output("heater", heater)),
        List.of());
  }
}
