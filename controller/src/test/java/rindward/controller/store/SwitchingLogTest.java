package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import rindward.controller.store.samples.SampleLog;

/** Every change of an output can be looked up with its reason. */
class SwitchingLogTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  private Database database;
  private SwitchingLog switchings;

  @BeforeEach
  void fill() {
    database = own.database();
    SampleLog log = new SampleLog(database);
    for (StoredSwitching switching :
        List.of(
            new StoredSwitching(1_000, "curing", "heater", true, "24.1 C is below 26 C"),
            new StoredSwitching(2_000, "curing", "heater", false, "warm enough"),
            new StoredSwitching(3_000, "curing", "heater", true, "24.1 C is below 26 C"),
            new StoredSwitching(3_000, "curing", "heater-2", true, "24.1 C is below 26 C"),
            new StoredSwitching(3_000, "storage", "heater", true, "9 C is below 10 C"))) {
      log.switching(switching);
    }
    log.flush(0);
    switchings = new SwitchingLog(database);
  }

  @Test
  void newest_keepsOutputAndReason_newestFirst() {
    assertThat(switchings.newest("curing", 0, 3_000, 10))
        .containsExactly(
            new StoredSwitching(2_000, "curing", "heater", false, "warm enough"),
            new StoredSwitching(1_000, "curing", "heater", true, "24.1 C is below 26 C"));
    assertThat(switchings.newest("storage", 0, 4_000, 1))
        .containsExactly(
            new StoredSwitching(3_000, "storage", "heater", true, "9 C is below 10 C"));
    assertThat(switchings.newest("nowhere", 0, 4_000, 10)).isEmpty();
  }

  @Test
  void between_beginsWithHowThingsStood() {
    List<String> told = new ArrayList<>();
    switchings.between(
        "curing", 2_500, 4_000, (output, at, isOn) -> told.add(output + " " + at + " " + isOn));
    assertThat(told)
        .containsExactly(
            "heater 1000 true", "heater 2000 false", "heater 3000 true", "heater-2 3000 true");
  }

  @Test
  void closings_areTheSwitchingsOnOfOneOutput() {
    long newest = switchings.newestMillis();
    assertThat(newest).isEqualTo(3_000);
    assertThat(switchings.closings("curing", "heater", 0, newest)).isEqualTo(2);
    assertThat(switchings.closings("curing", "heater", 1_000, newest)).isOne();
    assertThat(switchings.closings("curing", "heater", 0, 2_999)).isOne();
    assertThat(switchings.closings("nowhere", "heater", 0, newest)).isZero();
  }

  @Test
  void fileOfAnEarlierProgram_keepsItsSwitchings() throws SQLException {
    database.close();
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + own.file());
        Statement sql = connection.createStatement()) {
      sql.executeUpdate(
          "DROP TABLE switching; DROP TABLE reason; DROP TABLE output; DROP TABLE served;"
              + " DROP TABLE finished; DROP TABLE finished_up_to");
      sql.executeUpdate(
          "INSERT INTO event (at, room, kind, text) VALUES"
              + " (5000, 1, 'on', 'heater: it is 9 C: cold'),"
              + " (6000, 1, 'off', 'heater: warm enough'),"
              + " (7000, NULL, 'program', 'started')");
      sql.execute("PRAGMA user_version = 2");
    }

    assertThat(switchings.newest("curing", 0, 10_000, 10))
        .containsExactly(
            new StoredSwitching(6_000, "curing", "heater", false, "warm enough"),
            new StoredSwitching(5_000, "curing", "heater", true, "it is 9 C: cold"));
    assertThat(new EventLog(database).newest()).map(StoredEvent::kind).contains("program");
    assertThat(new EventLog(database).page("on", 0, 10_000, 0, 10)).isEmpty();
  }
}
