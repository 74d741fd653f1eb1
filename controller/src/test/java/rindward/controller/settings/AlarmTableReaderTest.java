package rindward.controller.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Priority;
import rindward.hardware.OutputKind;

/** The table that is shipped, held to what it promises a grower, and how slips in it are told. */
class AlarmTableReaderTest {
  private static final AlarmTable TABLE = AlarmTableReader.builtIn();

  private static Set<AlarmKind> all(Priority priority) {
    return TABLE.rows().values().stream()
        .filter(row -> row.priority() == priority)
        .map(AlarmRow::kind)
        .collect(Collectors.toCollection(() -> new TreeSet<>()));
  }

  @Test
  void whatWakesAPersonIsShort() {
    assertThat(all(Priority.WAKE))
        .containsExactly(
            AlarmKind.CHILLING,
            AlarmKind.NEAR_FREEZING,
            AlarmKind.CONDENSATION,
            AlarmKind.UNHELD_IN_COLD,
            AlarmKind.HEATER_WITHOUT_EFFECT,
            AlarmKind.HEATER_RUNAWAY,
            AlarmKind.HIGH_LIMIT,
            AlarmKind.SETTINGS_BROKEN,
            AlarmKind.UNREAD_COMMAND,
            AlarmKind.LOT_HARMFUL);
  }

  @Test
  void verdictsOnLotsAreNews() {
    assertThat(all(Priority.NEWS))
        .containsExactly(
            AlarmKind.LOT_CURED, AlarmKind.LOT_READY, AlarmKind.LOT_EAT_FIRST, AlarmKind.LOT_PAST);
  }

  @Test
  void nothingHidesWhatIsMoreUrgentThanItself() {
    for (AlarmRow root : TABLE.rows().values()) {
      for (AlarmKind follower : root.suppresses()) {
        assertThat(root.priority().isAtLeast(TABLE.row(follower).priority()))
            .as(root.kind() + " hides " + follower)
            .isTrue();
      }
    }
  }

  @Test
  void nearFreezingAndDangerOfFireAreNeverHidden() {
    for (AlarmRow root : TABLE.rows().values()) {
      assertThat(root.suppresses())
          .doesNotContain(AlarmKind.NEAR_FREEZING, AlarmKind.HIGH_LIMIT, AlarmKind.HEATER_RUNAWAY);
    }
  }

  @Test
  void noKindHidesItselfThroughOthers() {
    for (AlarmKind kind : AlarmKind.values()) {
      assertThat(hidden(kind)).doesNotContain(kind);
    }
  }

  @Test
  void workInARoomNeverHushesWhatWakes() {
    assertThat(TABLE.rows().values())
        .filteredOn(AlarmRow::isQuietDuringWork)
        .allSatisfy(row -> assertThat(row.priority()).isEqualTo(Priority.DIGEST));
  }

  @Test
  void everySentenceIsOne() {
    for (AlarmRow row : TABLE.rows().values()) {
      assertThat(
              Stream.concat(
                  Stream.of(row.cause(), row.consequence(), row.action()),
                  row.actionWithout().values().stream()))
          .allSatisfy(text -> assertThat(text).matches("[A-Z].{10,}\\."));
    }
  }

  @Test
  void adviceFitsWhatTheRoomHas() {
    AlarmRow chilling = TABLE.row(AlarmKind.CHILLING);
    assertThat(chilling.actionWith(EnumSet.allOf(OutputKind.class))).contains("heater runs");
    assertThat(chilling.actionWith(EnumSet.of(OutputKind.EXHAUST)))
        .startsWith("There is no heater here: shut the door, close the vent, cover the crates");
    assertThat(TABLE.row(AlarmKind.TOO_DRY).actionWith(Set.of()))
        .startsWith("There is no humidifier here");
  }

  @Test
  void slipsInATable_areAllTold() {
    Problems problems = new Problems();
    String text =
        """
        [chilling]
        name = "Fruit too cold"
        priority = "shout"
        on-delay = "5 minutes"
        off-delay = "30m"
        cause = "c"
        consequence = "c"
        action = "a"
        suppresses = ["cold-fruit"]
        [chiling]
        name = "x"
        """;
    assertThat(AlarmTableReader.read("alarms.toml", text, problems)).isEmpty();
    List<String> told = problems.list().stream().map(Problem::toString).toList();
    assertThat(told)
        .contains(
            "alarms.toml:3:1: chilling.priority was 'shout' but it must be one of wake, digest,"
                + " news",
            "alarms.toml:4:1: chilling.on-delay was '5 minutes' but it must be a time from 0s to"
                + " 1d, written like \"90s\", \"5m\", \"2h\" or \"10d\"",
            "alarms.toml:10:1: chiling is not a key known here; did you mean 'chilling'?",
            "alarms.toml:1:1: near-freezing is missing but it must be a table");
    assertThat(told).anyMatch(s -> s.startsWith("alarms.toml:9:1: chilling.suppresses was"));
  }

  private static Set<AlarmKind> hidden(AlarmKind root) {
    Set<AlarmKind> found = EnumSet.noneOf(AlarmKind.class);
    List<AlarmKind> open = new ArrayList<>(TABLE.row(root).suppresses());
    while (!open.isEmpty()) {
      AlarmKind next = open.remove(0);
      if (found.add(next)) {
        open.addAll(TABLE.row(next).suppresses());
      }
    }
    return found;
  }
}
