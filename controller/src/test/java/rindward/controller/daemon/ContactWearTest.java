package rindward.controller.daemon;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Recorded;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.controller.store.Database;
import rindward.controller.store.StoredSwitching;
import rindward.controller.store.SwitchingLog;
import rindward.controller.store.samples.SampleLog;
import rindward.hardware.wired.Simulated;

/** A contact is told of when it has closed as often as it may. */
class ContactWearTest {
  @TempDir private Path folder;
  private final List<Recorded> journal = new ArrayList<>();
  private Database database;
  private SampleLog log;
  private long now;

  @BeforeEach
  void open() {
    database = new Database(folder.resolve("rindward.db"));
    log = new SampleLog(database);
  }

  @AfterEach
  void close() {
    database.close();
  }

  @Test
  void closingsAreCountedFromLookToLook_andOverARestart() {
    ContactWear wear = wear(5);
    assertThat(isWornAfter(wear, 4)).isFalse();
    assertThat(isWornAfter(wear, 1)).isTrue();

    assertThat(isWornAfter(wear(5), 0)).isTrue();
    assertThat(isWornAfter(wear(7), 0)).isFalse();
  }

  @Test
  void contactThatWasReplacedAndTriedAgain_countsAnew() {
    ContactWear wear = wear(5);
    assertThat(isWornAfter(wear, 9)).isTrue();

    now += 1_000;
    journal.add(
        new Recorded(
            1,
            Instant.ofEpochMilli(now),
            "Wren",
            new OutputTried("storage", "heater", "GPIO 17", Instant.ofEpochMilli(now))));
    assertThat(isWornAfter(wear, 4)).isFalse();
    assertThat(isWornAfter(wear, 1)).isTrue();
  }

  @Test
  void contactOfUnknownLife_isNotJudged() {
    assertThat(isWornAfter(wear(0), 100)).isFalse();
  }

  private ContactWear wear(int life) {
    return new ContactWear(
        List.of(new OutputSetting("heater", "storage", new Simulated(), life)),
        new SwitchingLog(database));
  }

  private boolean isWornAfter(ContactWear wear, int closings) {
    for (int i = 0; i < closings; i++) {
      now += 1_000;
      log.switching(new StoredSwitching(now, "storage", "heater", true, "it is 9 C"));
      log.switching(new StoredSwitching(now + 500, "storage", "heater", false, "warm enough"));
    }
    now += 1_000;
    log.flush(now);
    wear.look(journal);
    return wear.findings().contains(new Finding(AlarmKind.CONTACT_WORN, "heater"));
  }
}
