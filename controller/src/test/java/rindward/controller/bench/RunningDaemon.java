package rindward.controller.bench;

import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * The jar's {@code run} on the example settings. The first decision is made when the first snapshot
 * comes to be, so the time at which its class is loaded tells, and the program needs no hook for
 * it.
 */
final class RunningDaemon {
  private static final String SNAPSHOT = "rindward.controller.alarm.ShedSnapshot ";
  private static final int IDLE_SECONDS = 30;

  private final Path jar;
  private final Path settings;
  private final Path folder;

  /** Runs with a copy of {@code example} in {@code folder}, on a free port. */
  RunningDaemon(Path jar, Path example, Path folder) throws IOException {
    this.jar = jar;
    this.folder = Files.createDirectory(folder.resolve("run"));
    this.settings = this.folder.resolve("shed.toml");
    try (ServerSocket free = new ServerSocket(0)) {
      Files.writeString(
          settings,
          Files.readString(example).replace("port = 8420", "port = " + free.getLocalPort()));
    }
  }

  /** What running costs. */
  record Cost(double firstDecisionSeconds, long residentKb, long pageResidentKb) {}

  /** Makes the archive of loaded classes that the package's installation makes. */
  List<String> archive() throws IOException, InterruptedException {
    Path archive = folder.resolve("rindward.jsa");
    Process process = start(List.of("-XX:ArchiveClassesAtExit=" + archive, "-Xlog:cds=off"));
    stopAfter(process, IDLE_SECONDS / 3);
    return List.of("-XX:SharedArchiveFile=" + archive, "-Xlog:cds=off");
  }

  /** Runs it for a while and stops it. */
  Cost measure(List<String> flags) throws IOException, InterruptedException {
    Path log = folder.resolve("loaded.txt");
    List<String> withLog = new ArrayList<>(flags);
    withLog.add("-Xlog:class+load:file=" + log + ":uptime");
    Process process = start(withLog);
    if (process.waitFor(IDLE_SECONDS, TimeUnit.SECONDS)) {
      throw new IOException("run ended by itself with " + process.exitValue());
    }
    long residentKb = residentKb(process.pid());
    long page = process.toHandle().children().findFirst().orElseThrow().pid();
    long pageResidentKb = residentKb(page);
    stopAfter(process, 0);
    return new Cost(loadedAtSeconds(log), residentKb, pageResidentKb);
  }

  private Process start(List<String> flags) throws IOException {
    List<String> arguments = new ArrayList<>(flags);
    arguments.addAll(List.of("-jar", jar.toString(), "run", "--settings", settings.toString()));
    return Jvm.with(arguments).redirectOutput(folder.resolve("printed.txt").toFile()).start();
  }

  private static void stopAfter(Process process, int seconds) throws InterruptedException {
    process.waitFor(seconds, TimeUnit.SECONDS);
    process.destroy();
    process.waitFor();
  }

  /** Lines look like {@code [0.412s] name source: ...}. */
  private static double loadedAtSeconds(Path log) throws IOException {
    try (Stream<String> lines = Files.lines(log)) {
      String line = lines.filter(l -> l.contains(SNAPSHOT)).findFirst().orElseThrow();
      return Double.parseDouble(line.substring(1, line.indexOf('s')));
    }
  }

  private static long residentKb(long pid) throws IOException {
    try (Stream<String> lines = Files.lines(Path.of("/proc/" + pid + "/status"))) {
      String line = lines.filter(l -> l.startsWith("VmRSS:")).findFirst().orElseThrow();
      return Long.parseLong(line.replaceAll("\\D", ""));
    }
  }
}
