package rindward.controller.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import rindward.controller.ledger.Account;

/**
 * Asks one contender in a process that has done nothing yet: the first answer is cold, the median
 * of later ones is warm. The file is in the system's page cache in both cases.
 */
final class FreshProcess {
  private static final int WARM_UP = 20;
  private static final int WARM = 11;

  /** Who takes longer than this to warm up is as warm as it gets. */
  private static final long WARM_UP_NANOS = 2_000_000_000L;

  private FreshProcess() {}

  /** Nanoseconds to open, for the first answer and for a later one; and the answer. */
  record Times(long openNanos, long coldNanos, long warmNanos, String answer) {}

  /** Starts a process, asks and waits for its end. */
  static Times ask(String contender, Path folder) throws IOException, InterruptedException {
    String[] words = Jvm.run(FreshProcess.class, contender, folder.toString()).split(" ", 4);
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
      System.out.println(
          (opened - start) + " " + (cold - opened) + " " + warm[WARM / 2] + " " + answer);
    }
  }
}
