package rindward.hardware.mqtt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The supervised connection against a real broker that is killed, held up and locked. */
class BrokerTest {
  private static final String NEWS = "test/news";

  @TempDir Path folder;

  private final AtomicLong nanos = new AtomicLong();
  private Mosquitto mosquitto;
  private Broker broker;
  private Broker other;

  @BeforeEach
  void start() throws IOException {
    mosquitto = Mosquitto.open(folder);
    mosquitto.start();
    broker = broker("shed", "");
    other = broker("other", "");
    other.listen(NEWS);
    other.listen("shed/state");
  }

  @AfterEach
  void stop() {
    if (mosquitto != null) {
      broker.close();
      other.close();
      mosquitto.close();
    }
  }

  private Broker broker(String name, String user) {
    return new Broker(
        new BrokerSettings(mosquitto.uri(), name, user, user.isEmpty() ? "" : "secret", name),
        nanos::get);
  }

  private void pass(int seconds) {
    for (int i = 0; i < seconds; i++) {
      nanos.addAndGet(1_000_000_000L);
      broker.supervise();
      other.supervise();
    }
  }

  /** The network takes real time, so ours stands still as soon as both are through again. */
  private void passUntilBothAreBack() {
    for (int i = 0; i < 130 && !(broker.trouble() + other.trouble()).isEmpty(); i++) {
      pass(1);
    }
    assertThat(broker.trouble() + other.trouble()).isEmpty();
  }

  private void awaitWord(String topic, String text) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(15))
        .pollInterval(Duration.ofMillis(20))
        .untilAsserted(
            () -> {
              broker.supervise();
              other.supervise();
              assertThat(other.latest(topic)).isNotNull();
              assertThat(other.latest(topic).text()).isEqualTo(text);
            });
  }

  @Test
  void wordsGetThrough_andWeAreSeenOnline() {
    pass(1);
    assertThat(broker.trouble()).isEmpty();
    broker.state(NEWS, "one");
    awaitWord(NEWS, "one");
    awaitWord("shed/state", "online");
    assertThat(broker.waiting()).isZero();
  }

  @Test
  void brokerAway_onlyTheLatestWordGoesOutWhenItIsBack() throws IOException {
    pass(1);
    mosquitto.kill();
    Awaitility.await()
        .until(
            () -> {
              broker.supervise();
              return !broker.trouble().isEmpty();
            });
    for (int i = 1; i <= 1000; i++) {
      broker.state(NEWS, "number " + i);
    }
    assertThat(broker.waiting()).isEqualTo(1);
    pass(5);
    assertThat(broker.trouble()).contains("cannot be reached");
    mosquitto.start();
    passUntilBothAreBack();
    awaitWord(NEWS, "number 1000");
  }

  @Test
  void commandOfAMinuteAgo_isNotSentAnyMore() throws IOException {
    pass(1);
    mosquitto.kill();
    broker.command(NEWS, "old", 15_000_000_000L);
    pass(60);
    mosquitto.start();
    passUntilBothAreBack();
    broker.state("test/after", "x");
    Awaitility.await()
        .until(
            () -> {
              broker.supervise();
              return broker.waiting() == 0;
            });
    assertThat(other.latest(NEWS)).isNull();
  }

  @Test
  void brokerThatLetsNothingThrough_isLeftAndFoundAgain() throws Exception {
    pass(1);
    mosquitto.holdUp();
    try {
      nanos.addAndGet(9_000_000_000L);
      broker.supervise();
      assertThat(broker.trouble()).isEmpty();
      nanos.addAndGet(31_000_000_000L);
      broker.supervise();
      assertThat(broker.trouble()).endsWith("lets no messages through.");
    } finally {
      mosquitto.goOn();
    }
    passUntilBothAreBack();
    broker.state(NEWS, "again");
    awaitWord(NEWS, "again");
  }

  @Test
  void leaving_saysOffline() {
    pass(1);
    awaitWord("shed/state", "online");
    broker.close();
    awaitWordOfOther("offline");
  }

  /** What the broker does for us when the board loses its power. */
  @Test
  void goneWithoutAWord_theLastWillSaysOffline() throws MqttException {
    other.supervise();
    Connection dying =
        new Connection(
            new BrokerSettings(mosquitto.uri(), "dying", "", "", "shed"), (t, p, r) -> {});
    dying.open(Set.of());
    dying.abandon();
    awaitWordOfOther("offline");
  }

  private void awaitWordOfOther(String text) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(15))
        .untilAsserted(
            () -> {
              assertThat(other.latest("shed/state")).isNotNull();
              assertThat(other.latest("shed/state").text()).isEqualTo(text);
            });
  }

  @Test
  void wrongPassword_isSaidWithoutThePassword() throws IOException {
    mosquitto.kill();
    mosquitto.nobody();
    mosquitto.start();
    Broker refused = broker("refused", "ann");
    refused.supervise();
    assertThat(refused.trouble())
        .endsWith("refuses user 'ann'; check user and password.")
        .doesNotContain("secret");
    assertThat(new BrokerSettings("tcp://x:1", "id", "ann", "secret", "r").toString())
        .doesNotContain("secret");
  }

  @Test
  void impossibleTopicsAndAddresses_areRefusedInASentence() {
    assertThatThrownBy(() -> broker.state("a/#", "x"))
        .hasMessage("topic was 'a/#' but it must be a name of its own, without '+' and '#'");
    assertThatThrownBy(() -> new BrokerSettings("http://x", "id", "", "", "r"))
        .hasMessage("broker was 'http://x' but it must be like tcp://host:1883 or ssl://host:8883");
  }
}
