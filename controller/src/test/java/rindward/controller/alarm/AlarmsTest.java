package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rindward.controller.diagnosis.Room;

/** An alarm's life as a grower meets it: called once, answered, hushed, hidden, reset. */
class AlarmsTest {
  private static final AlarmId WARM = Room.alarm(AlarmKind.TOO_WARM);
  private static final AlarmId DAMP = Room.alarm(AlarmKind.TOO_DAMP);
  private static final long TWO_HOURS = 7200;

  private final Room room = new Room();
  private AlarmTable table = Room.table();
  private Alarms alarms = Alarms.NONE;
  private long now;
  private final List<AlarmChange> changes = new ArrayList<>();

  private void pass(long seconds) {
    for (long end = now + seconds; now < end; ) {
      now += 10;
      take(alarms.after(room.facts(), table, now));
    }
  }

  private void take(Alarms next) {
    alarms = next;
    changes.addAll(next.changes());
  }

  private void warm() {
    room.warmest = 16_000;
  }

  private void cool() {
    room.warmest = 14_000;
  }

  private long calls(AlarmId id) {
    return changes.stream().filter(c -> c.isCall() && c.id().equals(id)).count();
  }

  private AlarmState state(AlarmId id) {
    return alarms.alarm(id).state();
  }

  @Test
  void conditionThatLasts_callsOnceAndNoMore() {
    warm();
    pass(60);
    assertThat(calls(WARM)).isZero();
    pass(100_000);
    assertThat(calls(WARM)).isOne();
    assertThat(state(WARM)).isEqualTo(AlarmState.UNACKNOWLEDGED);
  }

  @Test
  void acknowledged_isSilentUntilItHasGoneAndComesAnew() {
    warm();
    pass(200);
    take(alarms.acknowledge(WARM));
    pass(10_000);
    assertThat(state(WARM)).isEqualTo(AlarmState.ACKNOWLEDGED);
    cool();
    pass(300);
    assertThat(state(WARM)).isEqualTo(AlarmState.NORMAL);
    assertThat(calls(WARM)).isOne();
    warm();
    pass(200);
    assertThat(calls(WARM)).isEqualTo(2);
  }

  @Test
  void goneBeforeAnybodySawIt_saysSoAndStaysToBeSeen() {
    warm();
    pass(200);
    cool();
    pass(300);
    assertThat(state(WARM)).isEqualTo(AlarmState.RETURNED_UNACKNOWLEDGED);
    assertThat(changes.get(changes.size() - 1).isOver()).isTrue();
    take(alarms.acknowledge(WARM));
    assertThat(state(WARM)).isEqualTo(AlarmState.NORMAL);
  }

  @Test
  void shelf_isSilentAndEndsByItself_andThenCallsAgainIfItLasts() {
    warm();
    pass(200);
    take(alarms.shelve(WARM, now + TWO_HOURS, now));
    assertThat(state(WARM)).isEqualTo(AlarmState.SHELVED);
    pass(TWO_HOURS - 10);
    assertThat(state(WARM)).isEqualTo(AlarmState.SHELVED);
    assertThat(calls(WARM)).isOne();
    pass(10);
    assertThat(state(WARM)).isEqualTo(AlarmState.UNACKNOWLEDGED);
    assertThat(calls(WARM)).isEqualTo(2);
  }

  @Test
  void acknowledgementFromBeforeTheShelf_standsAfterIt() {
    warm();
    pass(200);
    take(alarms.acknowledge(WARM));
    take(alarms.shelve(WARM, now + TWO_HOURS, now));
    pass(TWO_HOURS + 100);
    assertThat(state(WARM)).isEqualTo(AlarmState.ACKNOWLEDGED);
    assertThat(calls(WARM)).isOne();
  }

  @Test
  void cameAndWentOnTheShelf_leavesNothing() {
    take(alarms.shelve(WARM, now + TWO_HOURS, now));
    warm();
    pass(600);
    cool();
    pass(TWO_HOURS);
    assertThat(state(WARM)).isEqualTo(AlarmState.NORMAL);
    assertThat(calls(WARM)).isZero();
    assertThat(alarms.all()).isEmpty();
  }

  @Test
  void noShelfIsLongerThanADay() {
    take(alarms.shelve(WARM, Long.MAX_VALUE, now));
    pass(86_390);
    assertThat(state(WARM)).isEqualTo(AlarmState.SHELVED);
    pass(10);
    assertThat(state(WARM)).isEqualTo(AlarmState.NORMAL);
  }

  @Test
  void workInTheRoom_shelvesWhatAnOpenDoorDoes_andNothingElse() {
    table = Room.table(Room.quietDuringWork(AlarmKind.TOO_WARM));
    take(alarms.workingIn(Room.NAME, now + TWO_HOURS, now));
    warm();
    room.humidity = 80_000;
    pass(TWO_HOURS - 10);
    assertThat(state(WARM)).isEqualTo(AlarmState.SHELVED);
    assertThat(calls(WARM)).isZero();
    assertThat(calls(DAMP)).isOne();
    pass(20);
    assertThat(calls(WARM)).isOne();
    assertThat(alarms.workUntilSeconds()).isEmpty();
  }

  @Test
  void rootHidesWhatFollowsFromIt_andTheFollowerStartsAnewAfterwards() {
    table = Room.table(Room.row(AlarmKind.TOO_WARM, Priority.WAKE, AlarmKind.TOO_DAMP));
    warm();
    room.humidity = 80_000;
    pass(10_000);
    take(alarms.acknowledge(WARM));
    pass(100);
    assertThat(state(DAMP)).isEqualTo(AlarmState.SUPPRESSED);
    assertThat(calls(DAMP)).isZero();
    cool();
    // Two minutes until the root has gone, then one more of the follower's own delay.
    pass(170);
    assertThat(calls(DAMP)).isZero();
    pass(20);
    assertThat(calls(DAMP)).isOne();
  }

  @Test
  void rootOutOfService_hidesNothing() {
    table = Room.table(Room.row(AlarmKind.TOO_WARM, Priority.WAKE, AlarmKind.TOO_DAMP));
    take(alarms.outOfService(WARM, true));
    warm();
    room.humidity = 80_000;
    pass(200);
    assertThat(state(WARM)).isEqualTo(AlarmState.OUT_OF_SERVICE);
    assertThat(calls(WARM)).isZero();
    assertThat(calls(DAMP)).isOne();
  }

  @Test
  void backInService_callsForWhatLasts() {
    take(alarms.outOfService(WARM, true));
    warm();
    pass(10_000);
    take(alarms.outOfService(WARM, false));
    pass(10);
    assertThat(calls(WARM)).isOne();
  }

  @Test
  void acceptedCompromise_isSilent() {
    room.accepted.add(AlarmKind.TOO_WARM);
    warm();
    pass(100_000);
    assertThat(state(WARM)).isEqualTo(AlarmState.SUPPRESSED);
    assertThat(calls(WARM)).isZero();
  }

  @Test
  void latching_staysUntilAPersonResetsIt() {
    table = Room.table(Room.latching(AlarmKind.TOO_WARM));
    warm();
    pass(200);
    cool();
    pass(10_000);
    assertThat(state(WARM)).isEqualTo(AlarmState.LATCHED_UNACKNOWLEDGED);
    take(alarms.acknowledge(WARM));
    assertThat(state(WARM)).isEqualTo(AlarmState.LATCHED_ACKNOWLEDGED);
    take(alarms.reset(WARM));
    assertThat(state(WARM)).isEqualTo(AlarmState.NORMAL);
    assertThat(calls(WARM)).isOne();
  }

  @Test
  void news_isToldOnceAndAsksForNothing() {
    AlarmId cured = new AlarmId(AlarmKind.LOT_CURED, Room.NAME, "K-1");
    table = Room.table(Room.row(AlarmKind.LOT_CURED, Priority.NEWS));
    room.findings.add(new Finding(AlarmKind.LOT_CURED, "K-1"));
    pass(100_000);
    assertThat(calls(cured)).isOne();
    assertThat(state(cured).needsAcknowledgement()).isFalse();
    room.findings.clear();
    pass(200);
    assertThat(alarms.all()).isEmpty();
  }

  @Test
  void twoProbesOfOneRoom_areTwoAlarms() {
    room.findings.addAll(
        Set.of(
            new Finding(AlarmKind.PROBE_SILENT, "one"),
            new Finding(AlarmKind.PROBE_SILENT, "two")));
    pass(100);
    assertThat(calls(new AlarmId(AlarmKind.PROBE_SILENT, Room.NAME, "one"))).isOne();
    assertThat(calls(new AlarmId(AlarmKind.PROBE_SILENT, Room.NAME, "two"))).isOne();
  }
}
