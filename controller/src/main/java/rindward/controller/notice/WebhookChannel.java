package rindward.controller.notice;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Map;

/**
 * Posts a notice as JSON ({@code person}, {@code subject}, {@code text}) to an address. The address
 * may hold a secret, so only its host is ever told.
 */
public final class WebhookChannel implements Channel {
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String name;
  private final URI address;
  private final HttpClient client = HttpClient.newBuilder().connectTimeout(PATIENCE).build();

  public WebhookChannel(String name, URI address) {
    this.name = name;
    this.address = address;
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public void send(Notice notice) throws IOException {
    String body =
        JSON.writeValueAsString(
            Map.of("person", notice.person(), "subject", notice.subject(), "text", notice.text()));
    HttpRequest request =
        HttpRequest.newBuilder(address)
            .timeout(PATIENCE)
            .header("Content-Type", "application/json")
            .POST(BodyPublishers.ofString(body))
            .build();
    HttpResponse<Void> answer;
    try {
      answer = client.send(request, BodyHandlers.discarding());
    } catch (IOException e) {
      throw new IOException(address.getHost() + " cannot be reached", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("was interrupted", e);
    }
    if (answer.statusCode() / 100 != 2) {
      throw new IOException(address.getHost() + " answered with status " + answer.statusCode());
    }
  }
}
