package rindward.controller.command.shed;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * The page beside {@code run} where no service manager looks after it: a process of its own with
 * limits of its own, started anew whenever it ends, however often that is, after a pause that
 * grows. It is worth less than control: it yields the processor to it, and goes first when memory
 * is short.
 */
final class PageChild implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(PageChild.class);

  /** What the installed program is called, where there is a script that knows better flags. */
  private static final String LAUNCHER = "rindward.launcher";

  /** The door of the jar, which stands above this room. */
  private static final String MAIN = "rindward.controller.command.Main";

  private static final Duration FIRST_PAUSE = Duration.ofSeconds(1);
  private static final Duration LONGEST_PAUSE = Duration.ofMinutes(1);

  /** One that lasted for so long was well. */
  private static final Duration WELL = Duration.ofMinutes(5);

  private static final int MOST_DOUBLINGS = 6;
  private static final Path NICE = Path.of("/usr/bin/nice");
  private static final List<String> FLAGS =
      List.of(
          "-Xmx96m",
          "-Xmn8m",
          "-Xss512k",
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-XX:+ExitOnOutOfMemoryError");

  private final List<String> command;
  private final LongSupplier nanos;
  private final CountDownLatch stopped = new CountDownLatch(1);
  private volatile @Nullable Process process;

  /**
   * @param command starts the page
   * @param nanos the monotonic clock
   */
  PageChild(List<String> command, LongSupplier nanos) {
    this.command = List.copyOf(command);
    this.nanos = nanos;
  }

  /** Returns the command that starts the page of a settings file as this program was started. */
  static List<String> command(Path settings) {
    List<String> command = new ArrayList<>();
    if (Files.isExecutable(NICE)) {
      command.addAll(List.of(NICE.toString(), "-n", "10"));
    }
    String launcher = System.getProperty(LAUNCHER);
    if (launcher != null) {
      command.add(launcher);
    } else {
      command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
      command.addAll(FLAGS);
      String classes = System.getProperty("java.class.path");
      command.addAll(
          classes.endsWith(".jar") && !classes.contains(File.pathSeparator)
              ? List.of("-jar", classes)
              : List.of("-cp", classes, MAIN));
    }
    command.addAll(
        List.of("page", "--beside-run", "--settings", settings.toAbsolutePath().toString()));
    return command;
  }

  /** Begins to look after it, on a thread of its own. */
  void start() {
    Thread thread = new Thread(this::look, "page");
    thread.setDaemon(true);
    thread.start();
  }

  private void look() {
    int ends = 0;
    try {
      while (stopped.getCount() > 0) {
        long began = nanos.getAsLong();
        String how = live();
        ends = nanos.getAsLong() - began > WELL.toNanos() ? 1 : ends + 1;
        Duration pause = pause(ends);
        if (stopped.getCount() > 0) {
          LOG.warn("The page {}; it is started anew in {} s", how, pause.toSeconds());
        }
        if (stopped.await(pause.toMillis(), TimeUnit.MILLISECONDS)) {
          return;
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Returns the pause before the next start. */
  static Duration pause(int ends) {
    Duration grown = FIRST_PAUSE.multipliedBy(1L << Math.min(ends - 1, MOST_DOUBLINGS));
    return grown.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : grown;
  }

  /** Returns how it ended. */
  private String live() throws InterruptedException {
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.INHERIT)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    // A service manager listens to control, and to nobody else.
    builder.environment().keySet().removeAll(List.of("NOTIFY_SOCKET", "WATCHDOG_USEC"));
    try {
      Process begun = builder.start();
      process = begun;
      if (stopped.getCount() == 0) {
        begun.destroy();
      }
      goesFirst(begun.pid());
      return "ended with " + begun.waitFor();
    } catch (IOException e) {
      return "could not be started: " + e.getMessage();
    }
  }

  /** When memory is short, the system ends whoever has the highest score. */
  private static void goesFirst(long pid) {
    try {
      Files.writeString(Path.of("/proc", Long.toString(pid), "oom_score_adj"), "500");
    } catch (IOException notHere) {
      // Not every system can be told; its memory is limited all the same.
    }
  }

  /** Returns its process; null while it has none. */
  @Nullable Process process() {
    return process;
  }

  /** Starts it no more, and tells it to end; waits for nothing. */
  void endSoon() {
    stopped.countDown();
    Process last = process;
    if (last != null) {
      last.destroy();
    }
  }

  /** Ends it, and starts it no more. */
  @Override
  public void close() {
    endSoon();
    Process last = process;
    if (last != null) {
      try {
        if (!last.waitFor(2, TimeUnit.SECONDS)) {
          last.destroyForcibly();
        }
      } catch (InterruptedException e) {
        last.destroyForcibly();
        Thread.currentThread().interrupt();
      }
    }
  }
}
