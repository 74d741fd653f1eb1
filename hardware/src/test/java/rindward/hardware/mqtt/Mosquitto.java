package rindward.hardware.mqtt;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.jspecify.annotations.Nullable;

/**
 * A real broker on a free port, to be started, killed, held up and started again. Where the program
 * is missing the test is skipped, but fails with {@code CI=true}.
 */
public final class Mosquitto implements AutoCloseable {
  private static final List<Path> PLACES =
      Stream.of("/usr/sbin/mosquitto", "/usr/bin/mosquitto", "/usr/local/sbin/mosquitto")
          .map(Path::of)
          .toList();

  private final Path folder;
  private final Path program;
  private final int port;
  private @Nullable Process process;

  private Mosquitto(Path folder, Path program, int port) {
    this.folder = folder;
    this.program = program;
    this.port = port;
  }

  public static Mosquitto open(Path folder) throws IOException {
    @Nullable Path program = PLACES.stream().filter(Files::isExecutable).findFirst().orElse(null);
    if (program == null) {
      if ("true".equals(System.getenv("CI"))) {
        throw new AssertionError("mosquitto is not installed");
      }
      assumeTrue(false, "mosquitto is not installed");
    }
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    Mosquitto broker = new Mosquitto(folder, program, port);
    broker.anybody();
    return broker;
  }

  public String uri() {
    return "tcp://127.0.0.1:" + port;
  }

  /** Lets anybody in. */
  void anybody() throws IOException {
    configure("allow_anonymous true");
  }

  /** Lets nobody in. */
  void nobody() throws IOException {
    configure("allow_anonymous false");
  }

  /** Shows a certificate to whoever comes; both files in PEM, which only we may read. */
  void secured(Path certificate, Path key) throws IOException {
    configure(
        "allow_anonymous true%nuser %s%ncertfile %s%nkeyfile %s"
            .formatted(System.getProperty("user.name"), certificate, key));
  }

  /** Where it is once secured. */
  String securedUri() {
    return "ssl://127.0.0.1:" + port;
  }

  public void start() throws IOException {
    process =
        new ProcessBuilder(program.toString(), "-c", folder.resolve("broker.conf").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("broker.log").toFile())
            .start();
    Awaitility.await()
        .atMost(Duration.ofSeconds(20))
        .pollInterval(Duration.ofMillis(20))
        .until(this::answers);
  }

  void kill() {
    if (process != null) {
      process.destroyForcibly();
      Awaitility.await().until(() -> !process.isAlive());
    }
  }

  /** Holds the program up: its connections stay open and nothing passes. */
  void holdUp() throws IOException, InterruptedException {
    signal("-STOP");
  }

  void goOn() throws IOException, InterruptedException {
    signal("-CONT");
  }

  @Override
  public void close() {
    kill();
  }

  private void signal(String signal) throws IOException, InterruptedException {
    Process kill = new ProcessBuilder("kill", signal, Long.toString(process.pid())).start();
    if (!kill.waitFor(5, TimeUnit.SECONDS) || kill.exitValue() != 0) {
      throw new IOException("the broker did not take " + signal);
    }
  }

  private boolean answers() {
    try (Socket ignored = new Socket("127.0.0.1", port)) {
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private void configure(String line) throws IOException {
    Files.writeString(
        folder.resolve("broker.conf"), "listener " + port + " 127.0.0.1\n" + line + "\n");
  }
}
