package rindward.controller.store.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.ledger.Run;
import rindward.controller.store.Database;

/**
 * Whatever is noted in whatever order, flushed, finished and remembered at whatever moment: the
 * history is what was noted.
 */
class SampleStoreTest {
  private static final long DAY = 86_400_000L;
  private static final long MIDNIGHT = 20_000 * DAY;

  /** Samples noted from a moment on, ten seconds apart; then perhaps a flush. */
  record Step(int day, int startSecond, int count, int value, boolean isFlushed, int flushDay) {}

  private static Step step(Any any) {
    return new Step(
        any.intBetween(0, 2),
        any.intBetween(0, 40) * 2_000,
        any.of(1, 3, 700),
        any.intBetween(-500, 500),
        any.yesOrNo(),
        any.intBetween(0, 4));
  }

  @Seeded(cases = 60)
  void theHistoryIsWhatWasNotedWhateverIsRememberedOrForgotten(Any any) throws IOException {
    List<Step> steps = any.list(1, 12, () -> step(any));
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
