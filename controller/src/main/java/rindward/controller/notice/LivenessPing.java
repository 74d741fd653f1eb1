package rindward.controller.notice;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;

/**
 * Tells an address that we live, so that somebody else notices when we do not: the dead cannot
 * call. The address may hold a secret, so only its host is ever told. For one thread, which it may
 * hold up for some seconds.
 */
public final class LivenessPing {
  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final URI address;
  private final HttpClient client = HttpClient.newBuilder().connectTimeout(PATIENCE).build();
  private volatile String trouble = "";

  public LivenessPing(URI address) {
    this.address = address;
  }

  /** Returns why the last attempt failed, in one sentence; empty when all is well. */
  public String trouble() {
    return trouble;
  }

  /** Tells it once; whether that worked is told by {@link #trouble()}. */
  public void give() {
    HttpRequest request = HttpRequest.newBuilder(address).timeout(PATIENCE).GET().build();
    try {
      HttpResponse<Void> answer = client.send(request, BodyHandlers.discarding());
      trouble =
          answer.statusCode() / 100 == 2
              ? ""
              : address.getHost() + " answered with status " + answer.statusCode();
    } catch (IOException e) {
      trouble = address.getHost() + " cannot be reached";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
