package rindward.controller.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A webhook against a real HTTP server that takes, refuses, or is gone. */
class WebhookChannelTest {
  private static final Notice NOTICE = new Notice("Ada", "Too \"cold\"", "Go now.\nCover it.");

  private final AtomicReference<String> received = new AtomicReference<>();
  private HttpServer server;
  private int status = 204;
  private WebhookChannel channel;

  @BeforeEach
  void start() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/",
        exchange -> {
          received.set(
              new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8));
          exchange.sendResponseHeaders(status, -1);
          exchange.close();
        });
    server.start();
    channel =
        new WebhookChannel(
            "push",
            URI.create("http://localhost:" + server.getAddress().getPort() + "/hook?key=secret"));
  }

  @AfterEach
  void stop() {
    server.stop(0);
  }

  @Test
  void notice_arrivesAsJson() throws IOException {
    channel.send(NOTICE);
    assertThat(received.get())
        .contains("\"person\":\"Ada\"")
        .contains("\"subject\":\"Too \\\"cold\\\"\"")
        .contains("\"text\":\"Go now.\\nCover it.\"");
  }

  @Test
  void refusal_isToldWithoutTheSecretInTheAddress() {
    status = 403;
    assertThatThrownBy(() -> channel.send(NOTICE)).hasMessage("localhost answered with status 403");
  }

  @Test
  void serverGone_isToldWithoutTheSecretInTheAddress() {
    server.stop(0);
    assertThatThrownBy(() -> channel.send(NOTICE)).hasMessage("localhost cannot be reached");
  }
}
