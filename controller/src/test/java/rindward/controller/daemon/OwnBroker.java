package rindward.controller.daemon;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;

/** A real broker on this machine; where there is none the test is skipped, but fails in CI. */
public final class OwnBroker implements AutoCloseable {
  private final Path folder;
  private final Path program;
  private final int port;
  private @Nullable Process process;

  public OwnBroker(Path folder) throws IOException {
    Optional<Path> found =
        Stream.of("/usr/sbin/mosquitto", "/usr/bin/mosquitto", "/usr/local/sbin/mosquitto")
            .map(Path::of)
            .filter(Files::isExecutable)
            .findFirst();
    if (found.isEmpty() && "true".equals(System.getenv("CI"))) {
      throw new AssertionError("mosquitto is not installed");
    }
    assumeTrue(found.isPresent(), "mosquitto is not installed");
    this.folder = folder;
    this.program = found.orElseThrow();
    try (ServerSocket free = new ServerSocket(0)) {
      this.port = free.getLocalPort();
    }
    Files.writeString(
        folder.resolve("broker.conf"),
        "listener %d 127.0.0.1\nallow_anonymous true\n".formatted(port));
    start();
  }

  public int port() {
    return port;
  }

  void start() throws IOException {
    process =
        new ProcessBuilder(program.toString(), "-c", folder.resolve("broker.conf").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("broker.log").toFile())
            .start();
    Awaitility.await().atMost(Duration.ofSeconds(20)).until(this::answers);
  }

  void kill() {
    if (process != null) {
      process.destroyForcibly().onExit().join();
    }
  }

  @Override
  public void close() {
    kill();
  }

  private boolean answers() {
    try (Socket unused = new Socket("127.0.0.1", port)) {
      return true;
    } catch (IOException e) {
      return false;
    }
  }
}
