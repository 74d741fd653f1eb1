package rindward.controller.diagnosis;

import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.control.OutputDecision;
import rindward.hardware.OutputKind;

/**
 * Whether a heater may heat that was told not to: it cannot be reached, or its room was seen to go
 * on warming. Then the relay before all heaters has to open. What was seen stands until a person
 * resets the alarm or takes it out of service; where all is only observed, nothing was told.
 */
public final class UncommandedHeat {
  private UncommandedHeat() {}

  /** Tells whether that is so after a tick. */
  public static boolean isIn(ShedSnapshot snapshot) {
    return snapshot.rooms().stream()
        .filter(room -> !room.room().observeOnly())
        .anyMatch(room -> isOutOfReach(room) || isSeen(room.room().name(), snapshot));
  }

  private static boolean isOutOfReach(RoomState room) {
    OutputDecision heater = room.rulings().get(OutputKind.HEATER);
    return heater != null && !heater.on() && room.failures().containsKey(OutputKind.HEATER);
  }

  private static boolean isSeen(String room, ShedSnapshot snapshot) {
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
