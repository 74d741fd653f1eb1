package rindward.hardware.mqtt;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real broker over TLS, with the certificate of a farm's own authority: {@code broker.pem},
 * beside this class as are its key and the certificate of a stranger. They are for tests only, are
 * no secret, and nothing else trusts them; made once by the JDK's {@code keytool -genkeypair
 * -keyalg RSA -keysize 2048 -dname CN=broker -ext san=ip:127.0.0.1 -startdate "2020/01/01 00:00:00"
 * -validity 36500}, and turned into PEM by {@code openssl pkcs12}, {@code x509} and {@code pkcs8}.
 */
class SecuredBrokerTest {
  @TempDir Path folder;

  private Mosquitto mosquitto;
  private Path authority;
  private @Nullable Broker broker;

  @BeforeEach
  void start() throws Exception {
    mosquitto = Mosquitto.open(folder);
    authority = beside("broker.pem");
    mosquitto.secured(authority, beside("broker-key.pem"));
    mosquitto.start();
  }

  @AfterEach
  void stop() {
    if (broker != null) {
      broker.close();
    }
    mosquitto.close();
  }

  @Test
  void whoItsAuthorityVouchesFor_isTrusted_andWordsGoThrough() {
    Broker ours = connect(authority);
    ours.listenToEach("shed/news");
    await(() -> assertThat(tried(ours)).isEmpty());
    ours.command("shed/news", "warm", Duration.ofMinutes(1).toNanos());
    await(
        () -> {
          ours.supervise();
          assertThat(ours.next("shed/news")).extracting(Incoming::text).isEqualTo("warm");
        });
  }

  @Test
  void aBrokerThatNobodyVouchesFor_isRefused_withASentence() throws Exception {
    Broker withUsualRoots = connect(null);
    await(() -> assertThat(tried(withUsualRoots)).contains("certif"));
    withUsualRoots.close();

    Broker withAnother = connect(beside("stranger.pem"));
    await(() -> assertThat(tried(withAnother)).contains("certif"));
  }

  @Test
  void anAuthorityThatIsNotThere_isNamed() throws Exception {
    Path missing = folder.resolve("none.pem");
    assertThat(tried(connect(missing))).contains("none.pem' but there is no such file");
    Path empty = Files.createFile(folder.resolve("empty.pem"));
    assertThat(tried(connect(empty))).contains("empty.pem' but");
  }

  private Broker connect(@Nullable Path trusting) {
    broker =
        new Broker(
            new BrokerSettings(mosquitto.securedUri(), "phone", "", "", "phone", trusting),
            System::nanoTime);
    return broker;
  }

  private static String tried(Broker broker) {
    broker.supervise();
    return broker.trouble();
  }

  private static void await(org.awaitility.core.ThrowingRunnable so) {
    Awaitility.await()
        .atMost(Duration.ofSeconds(60))
        .pollInterval(Duration.ofMillis(50))
        .untilAsserted(so);
  }

  private static Path beside(String name) throws URISyntaxException {
    return Path.of(SecuredBrokerTest.class.getResource(name).toURI());
  }
}
