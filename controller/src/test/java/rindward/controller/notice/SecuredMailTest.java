package rindward.controller.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.util.Map;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLSocketFactory;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.controller.notice.MailSettings.Security;

/**
 * Mail over TLS against a real server, which shows the certificate for {@code localhost} that lies
 * beside this class. Made for these tests by the JDK's {@code keytool}; nothing else trusts it.
 */
class SecuredMailTest {
  private static final String PASSWORD = "not-a-secret";
  private static final Notice NOTICE = new Notice("Ada", "Room storage: Too cold", "Go now.");

  private GreenMail server;

  @BeforeEach
  void start() throws URISyntaxException {
    Path own = Path.of(SecuredMailTest.class.getResource("localhost.p12").toURI());
    System.setProperty("greenmail.tls.keystore.file", own.toString());
    System.setProperty("greenmail.tls.keystore.password", PASSWORD);
    server = new GreenMail(ServerSetup.SMTPS.dynamicPort());
    server.start();
    server.setUser("shed@hollinbank.example", "shed", "secret");
  }

  @AfterEach
  void stop() {
    server.stop();
    System.clearProperty("greenmail.tls.keystore.file");
    System.clearProperty("greenmail.tls.keystore.password");
  }

  private MailSettings settings(String host) {
    return new MailSettings(
        host,
        server.getSmtps().getPort(),
        Security.TLS,
        "shed",
        "secret",
        "shed@hollinbank.example",
        Map.of("Ada", "ada@hollinbank.example"));
  }

  @Test
  void notice_arrivesAtAServerThatIsTrusted() throws Exception {
    new MailChannel("mail", settings("localhost"), trusting()).send(NOTICE);
    assertThat(server.getReceivedMessages()[0].getSubject()).isEqualTo("Room storage: Too cold");
  }

  @Test
  void certificateOfAnotherName_getsNeitherPasswordNorNotice() throws Exception {
    MailChannel channel = new MailChannel("mail", settings("127.0.0.1"), trusting());
    assertThatThrownBy(() -> channel.send(NOTICE))
        .hasMessageStartingWith("127.0.0.1:")
        .hasMessageContaining("certificate");
    assertThat(server.getReceivedMessages()).isEmpty();
  }

  @Test
  void certificateThatNobodyVouchesFor_getsNeitherPasswordNorNotice() {
    MailChannel channel = new MailChannel("mail", settings("localhost"));
    assertThatThrownBy(() -> channel.send(NOTICE))
        .hasMessageContaining("could not be used: its certificate is not trusted");
    assertThat(server.getReceivedMessages()).isEmpty();
  }

  private static SSLSocketFactory trusting() throws IOException, GeneralSecurityException {
    KeyStore own = KeyStore.getInstance("PKCS12");
    try (InputStream in = SecuredMailTest.class.getResourceAsStream("localhost.p12")) {
      own.load(in, PASSWORD.toCharArray());
    }
    KeyStore trusted = KeyStore.getInstance("PKCS12");
    trusted.load(null, null);
    trusted.setCertificateEntry("own", own.getCertificate("own"));
    TrustManagerFactory judges =
        TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
    judges.init(trusted);
    SSLContext context = SSLContext.getInstance("TLS");
    context.init(null, judges.getTrustManagers(), null);
    return context.getSocketFactory();
  }
}
