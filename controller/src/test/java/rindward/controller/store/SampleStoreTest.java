package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import rindward.controller.ledger.Run;

/**
 * Whatever is noted in whatever order, flushed, finished and remembered at whatever moment: the
 * history is what was noted.
 */
class SampleStoreTest {
  private static final long DAY = 86_400_000L;
  private static final long MIDNIGHT = 20_000 * DAY;

  /** Samples noted from a moment on, ten seconds apart; then perhaps a flush. */
  record Step(int day, int startSecond, int count, int value, boolean isFlushed, int flushDay) {}

  @Provide
  Arbitrary<Step> steps() {
    return Combinators.combine(
            Arbitraries.integers().between(0, 2),
            Arbitraries.integers().between(0, 40).map(n -> n * 2_000),
            Arbitraries.of(1, 3, 700),
            Arbitraries.integers().between(-500, 500),
            Arbitraries.of(true, false),
            Arbitraries.integers().between(0, 4))
        .as(Step::new);
  }

  @Property(tries = 60)
  void theHistoryIsWhatWasNotedWhateverIsRememberedOrForgotten(
      @ForAll @Size(min = 1, max = 12) List<@From("steps") Step> steps) throws IOException {
    Path folder = Files.createTempDirectory("history");
    Map<Long, Integer> noted = new TreeMap<>();
    try (Database database = new Database(folder.resolve("shed.sqlite"))) {
      SampleLog log = new SampleLog(database);
      SampleStore remembering = new SampleStore(database, log);
      for (Step step : steps) {
        for (int i = 0; i < step.count; i++) {
          long at = MIDNIGHT + step.day * DAY + 1000L * (step.startSecond + 10 * i);
          log.sample("storage", at, 10 * (step.value + i), 60_000);
          noted.put(at, 10 * (step.value + i));
        }
        if (step.isFlushed) {
          assertThat(log.flush(MIDNIGHT + step.flushDay * DAY).isFine()).isTrue();
        }
        assertThat(temperatures(remembering)).isEqualTo(noted);
        assertThat(temperatures(new SampleStore(database, log))).isEqualTo(noted);
      }
      assertThat(temperatures(remembering)).isEqualTo(noted);
    } finally {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }

  /** Reads a history, and insists on order. */
  private static Map<Long, Integer> temperatures(SampleStore store) {
    Map<Long, Integer> read = new TreeMap<>();
    long[] last = {Long.MIN_VALUE};
    store
        .history("storage")
        .forEach(
            0,
            Long.MAX_VALUE,
            (Run run) -> {
              assertThat(run.startMillis()).isGreaterThan(last[0]);
              last[0] = run.lastMillis();
              for (int i = 0; i < run.count(); i++) {
                read.put(
                    run.startMillis() + (long) i * run.stepMillis(), run.temperatureMilliC()[i]);
              }
            });
    return read;
  }
}
