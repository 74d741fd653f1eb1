package rindward.controller.store.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.ledger.Run;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.OwnDatabase;
import rindward.controller.store.StoreException;
import rindward.hardware.Thousandths;

/** What the loop notes is read back the same, whether in memory, in pieces or as a whole day. */
class SampleLogTest {
  private static final long DAY = 86_400_000L;
  private static final long MIDNIGHT = 20_000 * DAY;

  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  @Test
  void history_showsASampleBeforeAndAfterItIsFlushed() {
    SampleLog log = new SampleLog(own.database());
    log.sample("curing", MIDNIGHT + 10_700, 26_123, 79_996);
    String before = history(log, "curing");
    log.flush(MIDNIGHT + 11_000);

    assertThat(before).isEqualTo("10:26120/80000 ");
    assertThat(history(log, "curing")).isEqualTo(before);
    assertThat(history(log, "storage")).isEmpty();
  }

  @Test
  void history_afterManyFlushes_isOneLongRun() {
    SampleLog log = new SampleLog(own.database());
    note(log, MIDNIGHT, 100, 4);
    List<Run> runs = runs(log, "curing", MIDNIGHT, MIDNIGHT + DAY);
    assertThat(runs).hasSize(1);
    assertThat(runs.get(0).count()).isEqualTo(100);
    assertThat(runs.get(0).stepMillis()).isEqualTo(10_000);
  }

  @Test
  void flush_firstOfANewDay_makesTheDayOneChunkAndChangesNothing() {
    Database database = own.database();
    SampleLog log = new SampleLog(database);
    note(log, MIDNIGHT + DAY - 500_000, 100, 4);
    String before = history(log, "curing") + history(log, "storage");
    assertThat(chunks(database)).isEqualTo(2 * 26); // 50 of each day, and one flush over midnight

    log.flush(MIDNIGHT + DAY + 500_000);

    assertThat(chunks(database)).isLessThanOrEqualTo(2 * (1 + 13));
    log.flush(MIDNIGHT + 2 * DAY);
    assertThat(chunks(database)).isEqualTo(2 * 2);
    assertThat(history(log, "curing") + history(log, "storage")).isEqualTo(before);
  }

  @Test
  void flush_dayLeftOverFromACrash_isMadeOneChunkAtTheNextStart() throws IOException {
    SampleLog log = new SampleLog(own.database());
    note(log, MIDNIGHT, 100, 4);
    String before = history(log, "curing");

    Database after = own.database(own.copyAsLeftByPowerCut());
    SampleLog restarted = new SampleLog(after);
    assertThat(history(after, restarted, "curing")).isEqualTo(before);
    restarted.flush(MIDNIGHT + 40 * DAY);

    assertThat(chunks(after)).isEqualTo(2);
    assertThat(history(after, restarted, "curing")).isEqualTo(before);
  }

  @Test
  void history_clockSetBack_ordersSamplesAndTheLaterNotedOfASecondCounts() {
    SampleLog log = new SampleLog(own.database());
    log.sample("curing", MIDNIGHT + 20_000, 1_000, 50_000);
    log.sample("curing", MIDNIGHT + 30_000, 2_000, 50_000);
    log.flush(MIDNIGHT);
    log.sample("curing", MIDNIGHT + 10_000, 3_000, 50_000);
    log.sample("curing", MIDNIGHT + 20_000, 4_000, Thousandths.NONE);
    String expected = "10:3000/50000 20:4000/" + Thousandths.NONE + " 30:2000/50000 ";

    assertThat(history(log, "curing")).isEqualTo(expected);
    log.flush(MIDNIGHT);
    assertThat(history(log, "curing")).isEqualTo(expected);
  }

  @Test
  void history_sampleForAFinishedDay_isKeptInItsPlace() {
    SampleLog log = new SampleLog(own.database());
    log.sample("curing", MIDNIGHT + 10_000, 1_000, 50_000);
    log.sample("curing", MIDNIGHT + DAY, 2_000, 50_000);
    log.flush(MIDNIGHT + DAY);
    log.sample("curing", MIDNIGHT + 20_000, 3_000, 50_000);
    String expected = "10:1000/50000 20:3000/50000 86400:2000/50000 ";

    assertThat(history(log, "curing")).isEqualTo(expected);
    log.flush(MIDNIGHT + DAY);
    assertThat(history(log, "curing")).isEqualTo(expected);
  }

  @Test
  void history_partOfTheTime_handsOverOnlyTheRunsThatReachIntoIt() {
    SampleLog log = new SampleLog(own.database());
    log.sample("curing", MIDNIGHT + 10_000, 1_000, 50_000);
    log.sample("curing", MIDNIGHT + DAY, 2_000, 50_000);
    log.sample("curing", MIDNIGHT + 2 * DAY, 3_000, 50_000);
    log.flush(MIDNIGHT);

    assertThat(runs(log, "curing", MIDNIGHT + 10_000, MIDNIGHT + DAY)).hasSize(1);
    assertThat(runs(log, "curing", MIDNIGHT + 10_001, MIDNIGHT + DAY)).isEmpty();
    assertThat(runs(log, "curing", MIDNIGHT + DAY, MIDNIGHT + DAY + 1)).hasSize(1);
    assertThat(runs(log, "curing", Long.MIN_VALUE, Long.MAX_VALUE)).hasSize(3);
  }

  @Test
  void flush_folderMissing_holdsTheSamplesSaysSoAndWritesThemOnceItIsBack() throws IOException {
    Path file = own.folder().resolve("card/shed.sqlite");
    Database database = own.database(file);
    SampleLog log = new SampleLog(database);
    log.sample("curing", MIDNIGHT, 1_000, 50_000);
    log.event(MIDNIGHT, "curing", "relay", "heater on");

    assertThatThrownBy(() -> log.flush(MIDNIGHT)).isInstanceOf(StoreException.class);
    StoreHealth health = log.health();
    assertThat(health.isFine()).isFalse();
    assertThat(health.sentence())
        .isEqualTo(
            "holding samples in memory (1 so far): cannot use the database "
                + file
                + ": its folder does not exist; create the folder or correct the path");

    Files.createDirectory(file.getParent());
    assertThat(log.flush(MIDNIGHT)).isEqualTo(log.health());
    assertThat(log.health().sentence()).isEqualTo("samples reach the disk");
    assertThat(history(database, log, "curing")).isEqualTo("0:1000/50000 ");
    assertThat(new EventLog(database).newest()).isPresent();
  }

  @Test
  void flush_diskFull_holdsTheSamplesAndWritesThemOnceThereIsRoom() {
    Database database = own.database();
    SampleLog log = new SampleLog(database);
    limitPages(database, 1);
    for (int i = 0; i < 5_000; i++) {
      log.sample("curing", MIDNIGHT + i * 1_000L, 1_000, 50_000);
    }
    assertThatThrownBy(() -> log.flush(MIDNIGHT)).isInstanceOf(StoreException.class);
    assertThat(log.health().sentence())
        .startsWith("holding samples in memory (5000 so far): ")
        .contains("the disk is full");
    limitPages(database, 1_000_000);
    assertThat(log.flush(MIDNIGHT).isFine()).isTrue();
    assertThat(runs(log, "curing", MIDNIGHT, MIDNIGHT + DAY).get(0).count()).isEqualTo(5_000);
  }

  @Test
  void sample_memoryFull_givesUpTheOldestAndCountsThem() throws IOException {
    Path file = own.folder().resolve("card/shed.sqlite");
    Database database = own.database(file);
    SampleLog log = new SampleLog(database, 3);
    for (int i = 0; i < 5; i++) {
      log.sample("curing", MIDNIGHT + i * 10_000L, i * 1_000, 50_000);
    }
    assertThatThrownBy(() -> log.flush(MIDNIGHT)).isInstanceOf(StoreException.class);
    assertThat(log.health().sentence())
        .startsWith("holding samples in memory (3 so far, 2 older ones were given up): ");
    Files.createDirectory(file.getParent());
    log.flush(MIDNIGHT);
    assertThat(history(database, log, "curing"))
        .isEqualTo("20:2000/50000 30:3000/50000 40:4000/50000 ");
  }

  @Test
  void aMonthAtTenSeconds_takesAtMostFiveBytesASampleOnDisk() throws IOException {
    int days = 30;
    try (Database database = own.database()) {
      SampleLog log = new SampleLog(database);
      for (int day = 0; day < days; day++) {
        for (int i = 0; i < 8640; i++) {
          long at = MIDNIGHT + day * DAY + i * 10_000L;
          log.sample("curing", at, 20_000 + i, 60_000 - i);
          if (i % 288 == 0) {
            log.flush(at);
          }
        }
      }
      log.flush(MIDNIGHT + days * DAY);
    }
    assertThat(Files.size(own.file()) / (days * 8640.0)).isLessThanOrEqualTo(5.0);
  }

  @Test
  void heldAndFlushedAtOnce_readersSeeEverySampleOnce() throws Exception {
    try (Database database = new Database(own.file())) {
      database.open();
      SampleLog shared = new SampleLog(database);
      Thread flusher =
          new Thread(() -> IntStream.range(0, 200).forEach(i -> shared.flush(MIDNIGHT)));
      flusher.start();
      for (int i = 0; i < 300; i++) {
        shared.sample("curing", MIDNIGHT + i * 10_000L, i * 1_000, 50_000);
        List<Run> runs = new ArrayList<>();
        new SampleStore(database, shared).history("curing").forEach(0, MIDNIGHT + DAY, runs::add);
        assertThat(runs.stream().mapToInt(Run::count).sum()).isEqualTo(i + 1);
      }
      flusher.join();
      assertThat(shared.flush(MIDNIGHT).isFine()).isTrue();
    }
  }

  /** Notes {@code count} samples 10 s apart in two rooms, flushed every {@code flushEvery}. */
  private static void note(SampleLog log, long from, int count, int flushEvery) {
    for (int i = 0; i < count; i++) {
      log.sample("curing", from + i * 10_000L, 20_000 + i * 10, 60_000);
      log.sample("storage", from + i * 10_000L, 10_000 + i * 10, 70_000);
      if ((i + 1) % flushEvery == 0) {
        log.flush(from);
      }
    }
  }

  private static int chunks(Database database) {
    return database.read(
        c -> {
          try (Statement sql = c.createStatement();
              ResultSet row = sql.executeQuery("SELECT count(*) FROM chunk")) {
            return row.getInt(1);
          }
        });
  }

  private static void limitPages(Database database, int pages) {
    database.write(
        c -> {
          try (Statement sql = c.createStatement()) {
            return sql.execute("PRAGMA max_page_count = " + pages);
          }
        });
  }

  private List<Run> runs(SampleLog log, String room, long from, long to) {
    List<Run> runs = new ArrayList<>();
    new SampleStore(own.database(), log).history(room).forEach(from, to, runs::add);
    return runs;
  }

  private String history(SampleLog log, String room) {
    return history(own.database(), log, room);
  }

  /** Every sample as {@code second of the test's day:temperature/humidity}. */
  private static String history(Database database, SampleLog log, String room) {
    StringBuilder text = new StringBuilder();
    new SampleStore(database, log)
        .history(room)
        .forEach(
            0,
            Long.MAX_VALUE,
            run -> {
              for (int i = 0; i < run.count(); i++) {
                text.append((run.startMillis() + (long) i * run.stepMillis() - MIDNIGHT) / 1000)
                    .append(':')
                    .append(run.temperatureMilliC()[i])
                    .append('/')
                    .append(run.humidityMilliPct()[i])
                    .append(' ');
              }
            });
    return text.toString();
  }
}
