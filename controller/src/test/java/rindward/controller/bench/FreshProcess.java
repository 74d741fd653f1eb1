package rindward.controller.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rindward.controller.ledger.Account;

/**
 * Asks one contender in a process that has done nothing yet: the first answer is cold, the median
 * of later ones is warm. The file is in the system's page cache in both cases.
 */
final class FreshProcess {
  /** The flags that the service runs with. */
  static final List<String> FLAGS =
      List.of("-Xmx64m", "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1");

  private static final int WARM_UP = 20;
  private static final int WARM = 11;

  /** Who takes longer than this to warm up is as warm as it gets. */
  private static final long WARM_UP_NANOS = 2_000_000_000L;

  private FreshProcess() {}

  /** Nanoseconds to open, for the first answer and for a later one; and the answer. */
  record Times(long openNanos, long coldNanos, long warmNanos, String answer) {}

  /** Starts a process, asks and waits for its end. */
  static Times ask(String contender, Path folder) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(FLAGS);
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(FreshProcess.class.getName(), contender, folder.toString()));
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    String[] words =
        new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).split(" ", 4);
    if (process.waitFor() != 0 || words.length != 4) {
      throw new IOException("asking " + contender + " ended with " + process.exitValue());
    }
    return new Times(
        Long.parseLong(words[0]), Long.parseLong(words[1]), Long.parseLong(words[2]), words[3]);
  }

  public static void main(String[] args) throws Exception {
    long start = System.nanoTime();
    try (Contender contender = Contender.named(args[0])) {
      contender.open(Path.of(args[1]));
      long opened = System.nanoTime();
      Account answer = contender.ask();
      long cold = System.nanoTime();
      for (int i = 0; i < WARM_UP && System.nanoTime() - cold < WARM_UP_NANOS; i++) {
        contender.ask();
      }
      long[] warm = new long[WARM];
      for (int i = 0; i < WARM; i++) {
        long before = System.nanoTime();
        contender.ask();
        warm[i] = System.nanoTime() - before;
      }
      Arrays.sort(warm);
      System.out.print(
          (opened - start) + " " + (cold - opened) + " " + warm[WARM / 2] + " " + answer);
    }
  }
}
