package rindward.controller.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The jar with the service's flags in a process of its own, asked over HTTP as a page asks. */
final class ServedShed implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 600;
  private static final int LOOK_MILLIS = 200;

  private final ObjectMapper json = new ObjectMapper();
  private final HttpClient client = HttpClient.newHttpClient();
  private final Process process;
  private final int port;

  private ServedShed(Process process, int port) {
    this.process = process;
    this.port = port;
  }

  /** Returns a port that nobody listens on. */
  static int freePort() throws IOException {
    try (ServerSocket free = new ServerSocket(0)) {
      return free.getLocalPort();
    }
  }

  /**
   * Starts it and waits until it has measured something.
   *
   * @param arguments to the program, which must make it listen on {@code port}
   * @param folder stands in for the user's own, and takes what is printed
   */
  static ServedShed start(List<String> arguments, int port, Path folder)
      throws IOException, InterruptedException {
    Process process =
        Jvm.with(arguments).redirectOutput(folder.resolve("served.txt").toFile()).start();
    ServedShed shed = new ServedShed(process, port);
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
    while (!shed.hasMeasured()) {
      if (!process.isAlive() || System.nanoTime() > end) {
        shed.close();
        throw new IOException("nothing was served: see " + folder.resolve("served.txt"));
      }
      TimeUnit.MILLISECONDS.sleep(LOOK_MILLIS);
    }
    return shed;
  }

  /** Returns what stands at a path. */
  JsonNode json(String path) throws IOException, InterruptedException {
    return json.readTree(get(path));
  }

  /** Returns the answer as it came over the wire. */
  byte[] get(String path) throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build();
    HttpResponse<byte[]> response = client.send(request, BodyHandlers.ofByteArray());
    if (response.statusCode() != 200) {
      throw new IOException(path + " answered " + response.statusCode());
    }
    return response.body();
  }

  @Override
  public void close() throws InterruptedException {
    process.destroy();
    process.waitFor();
  }

  private boolean hasMeasured() throws InterruptedException {
    try {
      return json("/api/now").at("/rooms/0/temperatureC").isNumber();
    } catch (IOException notYet) {
      return false;
    }
  }
}
