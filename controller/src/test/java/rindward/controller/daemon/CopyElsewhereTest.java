package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.control.Tick;
import rindward.controller.settings.Elsewhere;
import rindward.controller.store.Database;
import rindward.controller.store.EventLog;
import rindward.controller.store.copies.Copies;
import rindward.controller.store.samples.SampleLog;
import rindward.controller.task.TaskSupervisor;

/** What goes to the second place, and when it is said that nothing does. */
class CopyElsewhereTest {
  private static final Instant NIGHT = Instant.parse("2026-11-02T03:00:00Z");

  @TempDir private Path folder;
  private final List<String> taken = new ArrayList<>();
  private Instant now = NIGHT;
  private @Nullable String refusal;
  private Database database;
  private Copies copies;
  private SampleLog samples;
  private CopyElsewhere elsewhere;

  @BeforeEach
  void start() {
    database = new Database(folder.resolve("rindward.db"));
    copies = new Copies(database, folder.resolve("backups"), ZoneOffset.UTC);
    restart();
  }

  private void restart() {
    samples = new SampleLog(database);
    elsewhere =
        new CopyElsewhere(
            new Elsewhere("shed@barn", "copies"),
            copy -> {
              if (refusal != null) {
                throw new IOException(refusal);
              }
              taken.add(copy.getFileName().toString());
            },
            copies,
            new EventLog(database),
            samples,
            ZoneOffset.UTC,
            () -> new Tick(now, 0),
            new TaskSupervisor(() -> now, () -> 0));
  }

  @Test
  void eachNewCopy_isTakenOnce_alsoAcrossARestart() throws Exception {
    copy();
    elsewhere.look();
    elsewhere.look();
    samples.flush(now.toEpochMilli());
    restart();
    elsewhere.look();
    assertThat(taken).containsExactly("rindward-20261102T030000Z.db");

    now = NIGHT.plus(Duration.ofDays(1));
    copy();
    elsewhere.look();
    assertThat(taken).hasSize(2);
    assertThat(samples.health().isFine()).isTrue();
  }

  @Test
  void aPlaceThatIsAwayForAWeek_isNoTrouble_andOnTheNinthDayIs_untilItIsBack() throws Exception {
    copy();
    elsewhere.look();
    samples.flush(now.toEpochMilli());
    refusal = "the folder is not there";
    for (int day = 1; day <= 7; day++) {
      assertRefusedAfter(day);
      assertThat(samples.health().elsewhereTrouble()).isNull();
    }
    restart();
    assertRefusedAfter(8);
    assertThat(samples.health().elsewhereTrouble())
        .isEqualTo(
            "no copy has come to shed@barn:copies since 2026-11-02: the folder is not there");
    assertThat(samples.health().sentence()).contains("without a copy elsewhere: no copy has come");

    refusal = null;
    elsewhere.look();
    assertThat(samples.health().elsewhereTrouble()).isNull();
    assertThat(taken).hasSize(2);
  }

  @Test
  void aPlaceThatNeverTookACopy_isToldAWeekAfterTheFirst() throws Exception {
    copy();
    refusal = "Permission denied";
    assertThatThrownBy(elsewhere::look).hasMessage(refusal);
    assertThat(samples.health().elsewhereTrouble()).isNull();

    assertRefusedAfter(9);
    assertThat(samples.health().elsewhereTrouble())
        .isEqualTo("no copy has come to shed@barn:copies yet: Permission denied");
  }

  private void assertRefusedAfter(int days) throws IOException {
    now = NIGHT.plus(Duration.ofDays(days));
    copy();
    assertThatThrownBy(elsewhere::look).hasMessage(refusal);
  }

  private void copy() throws IOException {
    assertThat(copies.make(now)).exists();
  }
}
