package rindward.controller.watch;

import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.control.Ruling;
import rindward.controller.snapshot.Snapshot;
import rindward.controller.snapshot.Snapshot.RoomState;
import rindward.hardware.OutputKind;

/**
 * Whether a heater may heat that was told not to: it cannot be reached, or its room was seen to go
 * on warming. Then the relay before all heaters has to open. What was seen stands until a person
 * resets the alarm or takes it out of service; where all is only observed, nothing was told.
 */
public final class UnbiddenHeat {
  private UnbiddenHeat() {}

  /** Tells whether that is so after a tick. */
  public static boolean isIn(Snapshot snapshot) {
    return snapshot.rooms().stream()
        .filter(room -> !room.room().observeOnly())
        .anyMatch(room -> isOutOfReach(room) || isSeen(room.room().name(), snapshot));
  }

  private static boolean isOutOfReach(RoomState room) {
    Ruling heater = room.rulings().get(OutputKind.HEATER);
    return heater != null && !heater.on() && room.failures().containsKey(OutputKind.HEATER);
  }

  private static boolean isSeen(String room, Snapshot snapshot) {
    return snapshot.judgement().alarms().all().entrySet().stream()
        .anyMatch(
            alarm ->
                isRunaway(alarm.getKey(), room)
                    && alarm.getValue().lasts()
                    && !alarm.getValue().isOutOfService());
  }

  private static boolean isRunaway(AlarmId id, String room) {
    return id.kind() == AlarmKind.HEATER_RUNAWAY && id.room().equals(room);
  }
}
