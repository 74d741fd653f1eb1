package rindward.dashboard;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.dashboard.signin.SignIn;

/** The pages over HTTPS, with a certificate that the JDK's own tool makes for the test. */
class HttpsTest {
  private static final String PASSWORD = "not-a-secret";
  private static final SetTime TIME = new SetTime(Instant.parse("2026-10-03T09:15:30Z"));

  @TempDir static Path folder;

  private static Path certificate;
  private static Path key;
  private static Path keyOfAnother;
  private static SSLContext trusting;

  @BeforeAll
  static void makeCertificate() throws Exception {
    KeyStore own = newKeyPair("EC", "own.p12");
    certificate = folder.resolve("shed.pem");
    key = pemOfKey(own, "shed-key.pem");
    Files.writeString(
        certificate,
        "A certificate for a test.\n"
            + pem("CERTIFICATE", own.getCertificate("server").getEncoded()));
    keyOfAnother = pemOfKey(newKeyPair("EC", "another.p12"), "another-key.pem");
    KeyStore known = KeyStore.getInstance("PKCS12");
    known.load(null, null);
    known.setCertificateEntry("shed", own.getCertificate("server"));
    TrustManagerFactory trust =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    trust.init(known);
    trusting = SSLContext.getInstance("TLS");
    trusting.init(null, trust.getTrustManagers(), null);
  }

  @Test
  void pagesAndSignInComeEncryptedAndTheCookieNeverGoesWithout() throws Exception {
    ServerIdentity identity = ServerIdentity.read(certificate, key);
    RememberedSignIn people = new RememberedSignIn();
    InventedShed shed = new InventedShed(InventedShed.well(TIME.instant(), 27.4));
    try (Dashboard dashboard =
        new Dashboard(
            new DashboardSettings("127.0.0.1", 0, true, identity),
            shed.desks(people),
            () -> "",
            TIME,
            new SignIn(people, TIME, 4),
            Duration.ofSeconds(15))) {
      dashboard.start();
      List<String> codes = new ArrayList<>();
      dashboard.announceCode(codes::add);
      HttpClient phone = HttpClient.newBuilder().sslContext(trusting).build();
      String site = "https://127.0.0.1:" + dashboard.port();

      HttpResponse<String> now =
          phone.send(get(site + "/api/now").build(), BodyHandlers.ofString());
      assertThat(now.statusCode()).isEqualTo(200);
      assertThat(now.body()).contains("Hollin Bank Farm");

      String owner = "{\"code\":\"%s\",\"name\":\"Wren\",\"password\":\"a russet gourd\"}";
      HttpResponse<String> signedIn =
          phone.send(
              get(site + "/api/set-up")
                  .header("Content-Type", "application/json")
                  .header("Origin", site)
                  .POST(HttpRequest.BodyPublishers.ofString(owner.formatted(codes.get(0))))
                  .build(),
              BodyHandlers.ofString());
      assertThat(signedIn.statusCode()).as(signedIn.body()).isEqualTo(200);
      assertThat(signedIn.headers().firstValue("Set-Cookie").orElse("")).contains("Secure");

      assertThatThrownBy(
              () ->
                  HttpClient.newHttpClient()
                      .send(
                          get("http://127.0.0.1:" + dashboard.port() + "/api/now").build(),
                          BodyHandlers.ofString()))
          .as("nothing is said without encryption")
          .isInstanceOf(IOException.class);
    }
  }

  @Test
  void whatCannotBeUsedIsSaidInOneSentence() throws IOException {
    Path absent = folder.resolve("absent.pem");
    assertThatThrownBy(() -> ServerIdentity.read(absent, key))
        .hasMessage("tls_certificate was '" + absent + "' but there is no such file");
    assertThatThrownBy(() -> ServerIdentity.read(key, key))
        .hasMessageContaining("it must be a PEM file, which begins with -----BEGIN CERTIFICATE");
    assertThatThrownBy(() -> ServerIdentity.read(certificate, certificate))
        .hasMessageContaining("tls_key")
        .hasMessageContaining("with CERTIFICATE in it but it must begin with");
    assertThatThrownBy(() -> ServerIdentity.read(certificate, keyOfAnother))
        .hasMessage(
            "tls_key was '"
                + keyOfAnother
                + "' but it must be the key of the certificate "
                + certificate);
    Path torn = Files.writeString(folder.resolve("torn.pem"), pem("PRIVATE KEY", new byte[9]));
    assertThatThrownBy(() -> ServerIdentity.read(certificate, torn))
        .hasMessageContaining("it must hold the certificate's EC key");
  }

  private static HttpRequest.Builder get(String address) {
    return HttpRequest.newBuilder(URI.create(address));
  }

  private static KeyStore newKeyPair(String algorithm, String name)
      throws IOException, InterruptedException, GeneralSecurityException {
    Path file = folder.resolve(name);
    Process keytool =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
                "-genkeypair",
                "-alias",
                "server",
                "-keyalg",
                algorithm,
                "-dname",
                "CN=shed.local",
                "-ext",
                "san=ip:127.0.0.1,dns:shed.local",
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

  private static Path pemOfKey(KeyStore store, String name)
      throws IOException, GeneralSecurityException {
    byte[] der = store.getKey("server", PASSWORD.toCharArray()).getEncoded();
    return Files.writeString(folder.resolve(name), pem("PRIVATE KEY", der));
  }

  private static String pem(String what, byte[] der) {
    String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(der);
    return "-----BEGIN " + what + "-----\n" + text + "\n-----END " + what + "-----\n";
  }
}
