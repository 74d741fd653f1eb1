package rindward.hardware.mqtt;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Duration;
import java.util.Base64;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real broker over TLS, with the certificate of a farm's own authority. */
class SecuredBrokerTest {
  private static final String PASSWORD = "russet";

  @TempDir Path folder;

  private Mosquitto mosquitto;
  private Path authority;
  private @Nullable Broker broker;

  @BeforeEach
  void start() throws Exception {
    mosquitto = Mosquitto.open(folder);
    KeyStore own = newKeyPair("broker");
    authority = pem("authority.pem", "CERTIFICATE", own.getCertificate("own").getEncoded());
    Path key =
        pem("key.pem", "PRIVATE KEY", own.getKey("own", PASSWORD.toCharArray()).getEncoded());
    mosquitto.secured(authority, key);
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

    KeyStore other = newKeyPair("other");
    Path stranger = pem("stranger.pem", "CERTIFICATE", other.getCertificate("own").getEncoded());
    Broker withAnother = connect(stranger);
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

  private KeyStore newKeyPair(String name) throws Exception {
    Path file = folder.resolve(name + ".p12");
    Process keytool =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "own",
                "-keyalg",
                "RSA",
                "-dname",
                "CN=" + name,
                "-ext",
                "san=ip:127.0.0.1",
                "-storetype",
                "PKCS12",
                "-storepass",
                PASSWORD,
                "-keystore",
                file.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(keytool.getInputStream().readAllBytes(), US_ASCII);
    assertThat(keytool.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(keytool.exitValue()).as(said).isZero();
    KeyStore store = KeyStore.getInstance("PKCS12");
    try (InputStream in = Files.newInputStream(file)) {
      store.load(in, PASSWORD.toCharArray());
    }
    return store;
  }

  private Path pem(String name, String what, byte[] der) throws IOException {
    String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(der);
    return Files.writeString(
        folder.resolve(name),
        "-----BEGIN " + what + "-----\n" + text + "\n-----END " + what + "-----\n");
  }
}
