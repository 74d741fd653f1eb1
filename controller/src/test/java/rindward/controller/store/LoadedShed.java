package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A hold on a {@link ShedUnderLoad}: hears what it acknowledges, freezes it, kills it. */
final class LoadedShed {
  private final Process process;
  private final Thread ear;
  private final CountDownLatch hasFlushed = new CountDownLatch(1);
  private final Set<String> said = new HashSet<>();
  private long lastTick;

  /** Starts one at a moment, and waits until it has flushed once. */
  LoadedShed(Path settings, Instant start) throws IOException, InterruptedException {
    process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx64m",
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                ShedUnderLoad.class.getName(),
                settings.toString(),
                String.valueOf(start.getEpochSecond()))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    ear = new Thread(this::listen, "ear");
    ear.start();
    assertThat(hasFlushed.await(60, TimeUnit.SECONDS)).as("it works").isTrue();
  }

  /** Lets it work for a while. */
  void work(int millis) throws InterruptedException {
    assertThat(process.waitFor(millis, TimeUnit.MILLISECONDS)).as("it ended by itself").isFalse();
  }

  /** Kills it so that it cannot do anything any more, and hears the last of it. */
  void kill() throws InterruptedException {
    process.destroyForcibly().waitFor();
    ear.join();
  }

  /** Stops it in the middle of whatever each of its threads is doing. */
  void freeze() throws IOException, InterruptedException {
    signal("STOP");
    while (!isFrozen()) {
      Thread.onSpinWait();
    }
  }

  void goOn() throws IOException, InterruptedException {
    signal("CONT");
  }

  /** Returns the entries that it has said were kept. */
  synchronized Set<String> said() {
    return Set.copyOf(said);
  }

  /** Returns its last tick, epoch seconds. */
  synchronized long lastTick() {
    return lastTick;
  }

  private void listen() {
    try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
      for (String line = lines.readLine(); line != null; line = lines.readLine()) {
        hear(line);
      }
    } catch (IOException e) {
      // It is dead; what it said before was heard.
    }
  }

  private synchronized void hear(String line) {
    List<String> words = List.of(line.split(" ", 2));
    switch (words.get(0)) {
      case "said" -> said.add(words.get(1));
      case "tick" -> lastTick = Long.parseLong(words.get(1));
      case "flushed" -> hasFlushed.countDown();
      default -> throw new IllegalStateException(line);
    }
  }

  private void signal(String name) throws IOException, InterruptedException {
    String command = "kill -" + name + " " + process.pid();
    assertThat(new ProcessBuilder("sh", "-c", command).start().waitFor()).isZero();
  }

  private boolean isFrozen() throws IOException {
    try (Stream<Path> threads = Files.list(Path.of("/proc/" + process.pid() + "/task"))) {
      for (Path thread : threads.toList()) {
        String stat = Files.readString(thread.resolve("stat"));
        if (stat.charAt(stat.lastIndexOf(')') + 2) != 'T') {
          return false;
        }
      }
      return true;
    }
  }
}
