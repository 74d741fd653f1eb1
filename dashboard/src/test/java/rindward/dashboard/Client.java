package rindward.dashboard;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A browser without a screen: keeps its cookie, and sends the token against forgery if asked to.
 */
final class Client {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final HttpClient http = HttpClient.newHttpClient();
  private final int port;
  private final Map<String, String> headers = new HashMap<>();

  Client(int port) {
    this.port = port;
  }

  /** Sends this header with every further request; null takes it away. */
  Client with(String header, String value) {
    if (value == null) {
      headers.remove(header);
    } else {
      headers.put(header, value);
    }
    return this;
  }

  /** Takes over the session and the token of an answer that opened one. */
  Client signedInBy(HttpResponse<String> answer) {
    with(
        "Cookie",
        answer.headers().allValues("Set-Cookie").stream()
            .map(cookie -> cookie.substring(0, cookie.indexOf(';')))
            .collect(Collectors.joining("; ")));
    return with("X-CSRF-Token", json(answer).get("csrfToken").asText());
  }

  /** Returns the cookie that it keeps. */
  String cookie() {
    return headers.get("Cookie");
  }

  HttpResponse<String> get(String path) {
    return send("GET", path, null);
  }

  HttpResponse<String> post(String path, String body) {
    return send("POST", path, body);
  }

  HttpResponse<String> put(String path, String body) {
    return send("PUT", path, body);
  }

  HttpResponse<String> delete(String path) {
    return send("DELETE", path, null);
  }

  HttpResponse<String> send(String method, String path, String body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
            .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofString(body));
    if (body != null && !headers.containsKey("Content-Type")) {
      request.header("Content-Type", "application/json");
    }
    headers.forEach(request::header);
    try {
      return http.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  static JsonNode json(HttpResponse<String> answer) {
    try {
      return JSON.readTree(answer.body());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns the sentence with which a request was refused. */
  static String detail(HttpResponse<String> answer) {
    return json(answer).path("detail").asText();
  }
}
