package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.control.Tick;
import rindward.controller.store.Database;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.store.samples.SampleStore;

/** A clock that cannot be believed, and what becomes of what is measured meanwhile. */
class RecordTimeTest {
  private static final Instant NOON = Instant.parse("2027-01-10T12:00:00Z");

  @TempDir private Path folder;
  private Database database;
  private SampleLog log;
  private SampleStore store;
  private Instant wall = NOON;
  private long nanos;

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("shed.db"));
    log = new SampleLog(database);
    store = new SampleStore(database, log);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void clockIn1970_thenSetRight_datesWhatWasMeasuredMeanwhile() {
    wall = Instant.EPOCH;
    RecordTime time = record();
    note(time, 12);
    time.judge(store);
    assertThat(kept()).isEmpty();

    wall = NOON;
    time.judge(store);
    note(time, 1);

    assertThat(kept()).hasSize(13).contains(NOON.toEpochMilli()).isSorted();
    assertThat(kept().get(0)).isEqualTo(NOON.minusSeconds(120).toEpochMilli());
  }

  @Test
  void neverSetRight_keepsNothing_andSaysWhy() {
    wall = Instant.EPOCH;
    RecordTime time = record();
    note(time, 12);
    time.judge(store);
    log.flush(NOON.toEpochMilli());

    assertThat(store.newestMillis()).isEmpty();
    assertThat(log.health().sentence())
        .isEqualTo(
            "holding samples in memory (12 so far): the clock cannot be believed yet; what is"
                + " measured waits for its date");
  }

  @Test
  void steppedBackAnHour_countsNoMinuteTwice() throws Exception {
    Files.createDirectories(folder.resolve("run/systemd/timesync"));
    Files.createFile(folder.resolve("run/systemd/timesync/synchronized"));
    RecordTime time = record();
    time.judge(store);
    note(time, 12);
    Instant before = wall;
    wall = wall.minus(Duration.ofHours(1));
    for (int i = 0; i < 36; i++) {
      note(time, 12);
      time.judge(store);
    }

    assertThat(kept()).doesNotHaveDuplicates().isSorted();
    assertThat(kept().get(kept().size() - 1)).isGreaterThan(before.toEpochMilli());
    assertThat(kept()).hasSizeLessThan(12 + 80);
  }

  @Test
  void clockBehindWhatIsKept_isNotBelieved_andWhatWasKeptStays() {
    log.sample("store", NOON.plusSeconds(3600).toEpochMilli(), 12_000, 60_000);
    log.flush(NOON.toEpochMilli());
    RecordTime time = record();
    note(time, 12);
    time.judge(store);

    assertThat(kept()).containsExactly(NOON.plusSeconds(3600).toEpochMilli());
  }

  private RecordTime record() {
    return new RecordTime(() -> new Tick(wall, nanos), folder, log);
  }

  private void note(RecordTime time, int ticks) {
    for (int i = 0; i < ticks; i++) {
      log.sample("store", time.now().at().toEpochMilli(), 12_000, 60_000);
      wall = wall.plusSeconds(10);
      nanos += 10_000_000_000L;
    }
  }

  private List<Long> kept() {
    List<Long> kept = new ArrayList<>();
    store
        .history("store")
        .forEach(
            0,
            Long.MAX_VALUE / 2,
            run -> {
              for (int i = 0; i < run.count(); i++) {
                kept.add(run.startMillis() + (long) i * run.stepMillis());
              }
            });
    return kept;
  }
}
