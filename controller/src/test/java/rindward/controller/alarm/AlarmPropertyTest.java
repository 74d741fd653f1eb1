package rindward.controller.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import rindward.controller.Any;
import rindward.controller.Seeded;
import rindward.controller.diagnosis.Room;
import rindward.hardware.Thousandths;

/** What must hold whatever the room does and whatever people tap. */
class AlarmPropertyTest {
  private static final AlarmId WARM = Room.alarm(AlarmKind.TOO_WARM);
  private static final long SHELF_SECONDS = 300;
  private static final long STEP_SECONDS = 40;

  /** What happens in one step: weather, people, or just time. */
  enum Step {
    WARM,
    COOL,
    PROBE_LOST,
    ACKNOWLEDGE,
    RESET,
    SHELVE,
    UNSHELVE,
    OUT,
    BACK,
    ROOT,
    ROOT_GONE,
    WAIT
  }

  private static AlarmTable table(boolean isLatching) {
    AlarmRow root = Room.row(AlarmKind.DOOR_OPEN, Priority.DIGEST, AlarmKind.TOO_WARM);
    return isLatching ? Room.table(root, Room.latching(AlarmKind.TOO_WARM)) : Room.table(root);
  }

  private static Alarms step(Alarms alarms, Step step, Room room, AlarmTable table, long now) {
    Alarms next =
        switch (step) {
          case ACKNOWLEDGE -> alarms.acknowledge(WARM);
          case RESET -> alarms.reset(WARM);
          case SHELVE -> alarms.shelve(WARM, now + SHELF_SECONDS, now);
          case UNSHELVE -> alarms.unshelve(WARM);
          case OUT -> alarms.outOfService(WARM, true);
          case BACK -> alarms.outOfService(WARM, false);
          case WARM, COOL, PROBE_LOST, ROOT, ROOT_GONE, WAIT -> alarms;
        };
    switch (step) {
      case WARM -> room.warmest = 16_000;
      case COOL -> room.warmest = 14_000;
      case PROBE_LOST -> room.warmest = Thousandths.NONE;
      case ROOT -> room.findings.add(new Finding(AlarmKind.DOOR_OPEN, ""));
      case ROOT_GONE -> room.findings.clear();
      default -> {}
    }
    return next.after(room.facts(), table, now);
  }

  private static Alarms lived(List<Step> steps, Room room, AlarmTable table) {
    Alarms alarms = Alarms.NONE;
    long now = 0;
    for (Step step : steps) {
      now += STEP_SECONDS;
      alarms = step(alarms, step, room, table, now);
    }
    return alarms;
  }

  @Seeded
  void noSecondCallWithoutANewOccurrenceOrTheEndOfAShelf(Any any) {
    List<Step> steps = any.list(0, 60, () -> any.of(Step.values()));
    int seconds = any.intBetween(1, 100);
    boolean isLatching = any.yesOrNo();
    AlarmTable table = table(isLatching);
    Room room = new Room();
    Alarms alarms = Alarms.NONE;
    long now = 0;
    int owed = 0;
    for (Step step : steps) {
      now += seconds;
      Alarm before = alarms.alarm(WARM);
      alarms = step(alarms, step, room, table, now);
      Alarm after = alarms.alarm(WARM);
      boolean occurred = after.condition().active() && !before.condition().active();
      boolean leftTheShelf =
          before.shelvedUntilSeconds() != Alarm.NOT_SHELVED
                  && after.shelvedUntilSeconds() == Alarm.NOT_SHELVED
              || step == Step.UNSHELVE;
      if (occurred || leftTheShelf) {
        owed = 1;
      }
      for (AlarmChange change : alarms.changes()) {
        if (change.isCall() && change.id().equals(WARM)) {
          assertThat(owed).as("calls owed before this one").isOne();
          assertThat(after.isHidden()).isFalse();
          owed = 0;
        }
      }
    }
  }

  @Seeded
  void shelfAlwaysEnds(Any any) {
    List<Step> steps = any.list(0, 60, () -> any.of(Step.values()));
    AlarmTable table = table(false);
    Room room = new Room();
    long now = STEP_SECONDS * steps.size();
    Alarms alarms = lived(steps, room, table);
    Alarms later = alarms.after(room.facts(), table, now + SHELF_SECONDS);
    assertThat(later.alarm(WARM).state()).isNotEqualTo(AlarmState.SHELVED);
  }

  @Seeded
  void whatLastsIsKnownInTheEnd(Any any) {
    List<Step> steps = any.list(0, 60, () -> any.of(Step.values()));
    boolean isLatching = any.yesOrNo();
    AlarmTable table = table(isLatching);
    Room room = new Room();
    long now = STEP_SECONDS * steps.size();
    Alarms alarms = lived(steps, room, table);
    alarms = step(alarms, Step.BACK, room, table, now);
    alarms = step(alarms, Step.ROOT_GONE, room, table, now);
    alarms = step(alarms, Step.WARM, room, table, now);
    for (int i = 0; i < 20; i++) {
      now += 60;
      alarms = alarms.after(room.facts(), table, now);
    }
    assertThat(alarms.alarm(WARM).state()).isIn(AlarmState.UNACKNOWLEDGED, AlarmState.ACKNOWLEDGED);
    assertThat(alarms.alarm(WARM).isAnnounced()).isTrue();
  }

  @Seeded
  void whatHasGoneAndBeenSeenIsForgotten(Any any) {
    List<Step> steps = any.list(0, 60, () -> any.of(Step.values()));
    AlarmTable table = table(true);
    Room room = new Room();
    long now = STEP_SECONDS * steps.size();
    Alarms alarms = lived(steps, room, table);
    for (Step step : List.of(Step.COOL, Step.ROOT_GONE, Step.BACK, Step.UNSHELVE)) {
      now += 200;
      alarms = step(alarms, step, room, table, now);
    }
    now += 200;
    alarms = alarms.after(room.facts(), table, now);
    alarms = alarms.acknowledge(Room.alarm(AlarmKind.DOOR_OPEN)).acknowledge(WARM).reset(WARM);
    assertThat(alarms.after(room.facts(), table, now + 200).all()).isEmpty();
  }

  @Seeded
  void aRestartChangesNothing(Any any) {
    List<Step> steps = any.list(0, 60, () -> any.of(Step.values()));
    int shift = any.intBetween(0, 10_000);
    AlarmTable table = table(true);
    Room room = new Room();
    long now = STEP_SECONDS * steps.size();
    Alarms alarms = lived(steps, room, table);
    Alarms restarted = alarms.onClock(-shift);
    for (int i = 0; i < 20; i++) {
      now += STEP_SECONDS;
      alarms = alarms.after(room.facts(), table, now);
      restarted = restarted.after(room.facts(), table, now - shift);
      assertThat(restarted.changes()).containsExactlyInAnyOrderElementsOf(alarms.changes());
    }
  }
}
