package rindward.controller.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.icegreen.greenmail.util.GreenMail;
import com.icegreen.greenmail.util.ServerSetup;
import jakarta.mail.internet.MimeMessage;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rindward.controller.notice.MailSettings.Security;

/** Mail against a real SMTP server that takes it, refuses the password, or has gone. */
class MailChannelTest {
  private static final Notice NOTICE = new Notice("Ada", "Room storage: Too cold", "Go now.\nÄ");

  private GreenMail server;

  @BeforeEach
  void start() {
    server = new GreenMail(ServerSetup.SMTP.dynamicPort());
    server.start();
    server.setUser("shed@hollinbank.example", "shed", "secret");
  }

  @AfterEach
  void stop() {
    server.stop();
  }

  private MailChannel channel(Security security, String password) {
    return new MailChannel(
        "mail",
        new MailSettings(
            "localhost",
            server.getSmtp().getPort(),
            security,
            "shed",
            password,
            "shed@hollinbank.example",
            Map.of("Ada", "ada@hollinbank.example")));
  }

  @Test
  void notice_arrivesWithItsWords() throws Exception {
    channel(Security.NONE, "secret").send(NOTICE);
    MimeMessage mail = server.getReceivedMessages()[0];
    assertThat(mail.getSubject()).isEqualTo("Room storage: Too cold");
    assertThat(mail.getAllRecipients()[0]).hasToString("ada@hollinbank.example");
    assertThat(mail.getContent().toString().replace("\r\n", "\n")).startsWith("Go now.\nÄ");
  }

  @Test
  void wrongPassword_isToldWithoutIt() {
    MailChannel channel = channel(Security.NONE, "wrong-password");
    assertThatThrownBy(() -> channel.send(NOTICE))
        .hasMessage("localhost refuses user 'shed'; check user and password")
        .hasMessageNotContaining("wrong-password");
  }

  @Test
  void serverWithoutTls_getsNeitherPasswordNorNotice() {
    MailChannel channel = channel(Security.STARTTLS, "secret");
    assertThatThrownBy(() -> channel.send(NOTICE)).hasMessageContaining("STARTTLS");
    assertThat(server.getReceivedMessages()).isEmpty();
  }

  @Test
  void serverGone_isTold() {
    MailChannel channel = channel(Security.NONE, "secret");
    server.stop();
    assertThatThrownBy(() -> channel.send(NOTICE))
        .hasMessageStartingWith("localhost:")
        .hasMessageContaining("could not be used");
  }

  @Test
  void personWithoutAnAddress_isNamed() {
    MailChannel channel = channel(Security.NONE, "secret");
    assertThatThrownBy(() -> channel.send(new Notice("Ben", "s", "t")))
        .hasMessage("there is no address for Ben");
  }
}
