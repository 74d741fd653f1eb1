package rindward.controller.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToLongFunction;
import java.util.stream.Stream;

/**
 * Prints one table, everything measured in one run: what a lot's account of a season costs here,
 * beside the same question to SQLite and DuckDB over the same samples; and what keeping and running
 * cost. Run by {@code mvn -Pquick,benchmark verify}.
 */
public final class Benchmark {
  private static final int PROCESSES = 5;

  private Benchmark() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("benchmark");
    try {
      int samples = Season.forEach((second, temperature, humidity) -> {});
      System.out.printf(
          Locale.ROOT,
          "Full account of one lot over %,d samples (%d days at 10 s); medians of %d fresh"
              + " processes with %s%n%n",
          samples,
          Season.DAYS,
          PROCESSES,
          String.join(" ", Jvm.FLAGS));
      System.out.println("| | filled, samples/s | B a sample | open, ms | cold, ms | warm, ms |");
      System.out.println("| --- | ---: | ---: | ---: | ---: | ---: |");
      String answer = "";
      for (String name : List.of("chunks", "sqlite", "duckdb")) {
        answer = row(Contender.named(name), name, folder, samples, answer);
      }
      System.out.println("\n| | |\n| --- | ---: |");
      long life = Long.parseLong(Jvm.run(WholeLife.class, folder.toString()));
      line("whole life of the lot with its cure, warm", "%.1f ms", life / 1e6);
      line(
          "stored as the daemon does, a transaction for every 45 s of two rooms",
          "%,.0f samples/s",
          Storing.samplesPerSecond(folder));
      TenSeasons.print();
      Path jar = Path.of(args[0]);
      if (Files.exists(jar)) {
        running(new RunningDaemon(jar, Path.of(args[1]), folder));
      } else {
        System.out.println("There is no " + jar + ": run is not measured");
      }
    } finally {
      delete(folder);
    }
  }

  private static void running(RunningDaemon daemon) throws IOException, InterruptedException {
    RunningDaemon.Cost plain = daemon.measure(List.of());
    RunningDaemon.Cost archived = daemon.measure(daemon.archive());
    line("run, time to first decision", "%.2f s", plain.firstDecisionSeconds());
    line("the same with an archive of classes", "%.2f s", archived.firstDecisionSeconds());
    line("run, resident memory idle", "%.0f MB", plain.residentKb() / 1024.0);
    line("the same with an archive of classes", "%.0f MB", archived.residentKb() / 1024.0);
    line("its page, resident memory idle", "%.0f MB", plain.pageResidentKb() / 1024.0);
  }

  private static void line(String what, String format, double value) {
    System.out.printf(Locale.ROOT, "| %s | " + format + " |%n", what, value);
  }

  private static String row(
      Contender contender, String name, Path folder, int samples, String expected)
      throws Exception {
    long begin = System.nanoTime();
    contender.fill(folder);
    double fillSeconds = (System.nanoTime() - begin) / 1e9;
    List<FreshProcess.Times> times = new ArrayList<>();
    for (int i = 0; i < PROCESSES; i++) {
      times.add(FreshProcess.ask(name, folder));
    }
    String answer = times.get(0).answer();
    if (!expected.isEmpty() && !expected.equals(answer)) {
      throw new IllegalStateException(
          contender.title() + " answered " + answer + " but it must be " + expected);
    }
    System.out.printf(
        Locale.ROOT,
        "| %s | %,.0f | %.1f | %.0f | %.0f | %.1f |%n",
        contender.title(),
        samples / fillSeconds,
        Files.size(contender.file(folder)) / (double) samples,
        medianMillis(times, FreshProcess.Times::openNanos),
        medianMillis(times, FreshProcess.Times::coldNanos),
        medianMillis(times, FreshProcess.Times::warmNanos));
    return answer;
  }

  private static double medianMillis(
      List<FreshProcess.Times> times, ToLongFunction<FreshProcess.Times> which) {
    return times.stream().mapToLong(which).sorted().toArray()[times.size() / 2] / 1e6;
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
