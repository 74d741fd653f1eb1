package rindward.hardware.mqtt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicLong;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.hardware.Reading;

/** Probes and relays behind a real broker, played by a client of their own. */
class NetworkDevicesTest {
  private static final Instant NOW = Instant.parse("2026-11-01T12:00:00Z");
  private static final String AIR = "barn/air";
  private static final String COMMAND = "plug/command";
  private static final String STATE = "plug/state";

  @TempDir Path folder;

  private final AtomicLong nanos = new AtomicLong();
  private Mosquitto mosquitto;
  private Broker broker;
  private MqttClient device;

  @BeforeEach
  void start() throws IOException, MqttException {
    mosquitto = Mosquitto.open(folder);
    mosquitto.start();
    device = new MqttClient(mosquitto.uri(), "device", new MemoryPersistence());
    device.connect();
    broker = new Broker(new BrokerSettings(mosquitto.uri(), "shed", "", "", "shed"), nanos::get);
  }

  @AfterEach
  void stop() throws MqttException {
    if (mosquitto != null) {
      broker.close();
      device.disconnectForcibly(0, 100, false);
      device.close(true);
      mosquitto.close();
    }
  }

  private NetworkProbe probe(PayloadField temperature, PayloadField humidity, PayloadField time) {
    NetworkProbe probe =
        new NetworkProbe(
            new NetworkProbeSettings(
                "barn",
                AIR,
                temperature,
                false,
                humidity,
                time,
                new PayloadField("/battery"),
                Duration.ofMinutes(5)),
            broker,
            nanos::get,
            () -> NOW);
    broker.supervise();
    return probe;
  }

  private NetworkProbe plainProbe() {
    return probe(PayloadField.WHOLE, null, null);
  }

  private void publish(String topic, String text, boolean isRetained) throws MqttException {
    device.publish(topic, text.getBytes(), 1, isRetained);
  }

  private void arrive(String topic, String text) throws MqttException {
    publish(topic, text, false);
    Awaitility.await()
        .until(() -> broker.latest(topic) != null && broker.latest(topic).text().equals(text));
  }

  private void pass(int seconds) {
    nanos.addAndGet(seconds * 1_000_000_000L);
    broker.supervise();
  }

  @Test
  void plainPayload_isRead() throws Exception {
    NetworkProbe probe = plainProbe();
    assertThatThrownBy(probe::read).hasMessage("probe barn: has published nothing yet");
    arrive(AIR, " 12.345 ");
    assertThat(probe.read()).isEqualTo(Reading.ofTemperature(12.345));
  }

  @Test
  void jsonPayload_isReadByPointer() throws Exception {
    NetworkProbe probe =
        probe(new PayloadField("/air/t"), new PayloadField("/air/rh"), new PayloadField("/at"));
    arrive(
        AIR, "{\"air\":{\"t\":12.5,\"rh\":61},\"battery\":87.5,\"at\":\"2026-11-01T11:59:00Z\"}");
    assertThat(probe.read()).isEqualTo(Reading.of(12.5, 61));
    assertThat(probe.batteryMilliPct()).hasValue(87_500);
  }

  @Test
  void ownTime_countsFromWhenItWasTaken_inAnyOfItsForms() throws Exception {
    NetworkProbe probe = probe(new PayloadField("/t"), null, new PayloadField("/at"));
    arrive(AIR, "{\"t\":12.5,\"at\":" + (NOW.getEpochSecond() - 301) + "}");
    assertThatThrownBy(probe::read).hasMessage("probe barn: last value is 301 s old");
    arrive(AIR, "{\"t\":12.5,\"at\":" + (NOW.toEpochMilli() - 299_000) + "}");
    assertThat(probe.read().temperatureMilliC()).isEqualTo(12_500);
    arrive(AIR, "{\"t\":12.5,\"at\":\"2026-11-01T13:00:00Z\"}");
    assertThatThrownBy(probe::read).hasMessageContaining("must not be ahead of ours");
    arrive(AIR, "{\"t\":12.5,\"at\":\"noon\"}");
    assertThatThrownBy(probe::read)
        .hasMessage("probe barn: its own time was 'noon' but it must be like 2026-11-01T12:00:00Z");
  }

  @Test
  void silentProbe_growsOldByItsArrival() throws Exception {
    NetworkProbe probe = plainProbe();
    arrive(AIR, "12.5");
    nanos.addAndGet(Duration.ofMinutes(5).toNanos());
    assertThat(probe.read().temperatureMilliC()).isEqualTo(12_500);
    nanos.addAndGet(Duration.ofSeconds(1).toNanos());
    assertThatThrownBy(probe::read).hasMessage("probe barn: last value is 301 s old");
  }

  @Test
  void keptValueWithoutATimeOfItsOwn_isNotBelieved() throws Exception {
    publish(AIR, "12.5", true);
    NetworkProbe probe = plainProbe();
    Awaitility.await().until(() -> broker.latest(AIR) != null);
    assertThatThrownBy(probe::read).hasMessageContaining("nobody knows how old it is");
    arrive(AIR, "13.5");
    assertThat(probe.read().temperatureMilliC()).isEqualTo(13_500);
  }

  @Test
  void messageThatIsNone_saysWhatItWas() throws Exception {
    NetworkProbe probe = probe(new PayloadField("/t"), null, null);
    arrive(AIR, "12.5 C");
    assertThatThrownBy(probe::read)
        .hasMessage("probe barn: its message was '12.5 C' but it must be JSON");
    arrive(AIR, "{\"temp\":12}");
    assertThatThrownBy(probe::read)
        .hasMessage("probe barn: its message was '{\"temp\":12}' but it must have /t");
    arrive(AIR, "{\"t\":\"warm\"}");
    assertThatThrownBy(probe::read)
        .hasMessage("probe barn: its value was 'warm' but it must be a number at /t");
  }

  private NetworkRelay relay() {
    NetworkRelay relay =
        new NetworkRelay(
            new NetworkRelaySettings(
                "heater", COMMAND, "ON", "OFF", STATE, PayloadField.WHOLE, Duration.ofMinutes(1)),
            broker,
            nanos::get);
    broker.supervise();
    return relay;
  }

  @Test
  void relay_isCommandedEachTickAndReadBack() throws Exception {
    NetworkRelay relay = relay();
    relay.set(true);
    broker.supervise();
    Awaitility.await().until(() -> broker.latest(COMMAND) != null);
    assertThat(broker.latest(COMMAND).text()).isEqualTo("ON");
    assertThat(broker.latest(COMMAND).isRetained()).isFalse();
    arrive(STATE, "ON");
    pass(20);
    relay.set(true);
    assertThat(broker.waiting()).isOne();
  }

  @Test
  void relayThatDoesNotFollow_isToldAfterTenSeconds() throws Exception {
    NetworkRelay relay = relay();
    arrive(STATE, "OFF");
    relay.set(true);
    pass(10);
    relay.set(true);
    pass(1);
    assertThatThrownBy(() -> relay.set(true))
        .hasMessage("relay heater: it was switched on but says 'OFF'");
  }

  @Test
  void relayThatFallsSilent_isTold() throws Exception {
    NetworkRelay relay = relay();
    relay.set(true);
    arrive(STATE, "ON");
    nanos.addAndGet(61_000_000_000L);
    assertThatThrownBy(() -> relay.set(true))
        .hasMessage("relay heater: it has been silent for 61 s");
  }

  @Test
  void keptCommand_isRefused_andOffIsCommandedUntilItIsDeleted() throws Exception {
    publish(COMMAND, "ON", true);
    NetworkRelay relay = relay();
    Awaitility.await().until(() -> broker.isKept(COMMAND));
    assertThatThrownBy(() -> relay.set(true)).hasMessageContaining("never retain commands");
    broker.supervise();
    Awaitility.await().until(() -> broker.latest(COMMAND).text().equals("OFF"));
    assertThatThrownBy(() -> relay.set(true)).hasMessageContaining("never retain commands");
    publish(COMMAND, "", true);
    Awaitility.await().until(() -> !broker.isKept(COMMAND));
    relay.set(true);
    broker.supervise();
    Awaitility.await().until(() -> broker.latest(COMMAND).text().equals("ON"));
  }
}
