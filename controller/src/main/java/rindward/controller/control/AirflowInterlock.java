package rindward.controller.control;

import java.util.Map;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * No heat without moving air: a heater that relies on the room's fan is off unless the fan is on,
 * whoever asks for it, for a heater in still air overheats. That the fan turns because it was
 * switched on is trusted; what proves it is a contact in the heater's own circuit.
 */
public final class AirflowInterlock {
  private AirflowInterlock() {}

  /** Takes the heat out of what was decided where the fan is off. */
  public static void apply(Room room, Map<OutputKind, OutputDecision> rulings) {
    OutputDecision heater = rulings.get(OutputKind.HEATER);
    OutputDecision fan = rulings.get(OutputKind.CIRCULATION);
    if (heater != null && heater.on() && fan != null && !fan.on() && room.heatTrust().needsFan()) {
      rulings.put(
          OutputKind.HEATER,
          new OutputDecision(
              false, Precedence.HARDWARE_LIMIT, Reason.of(ReasonCode.WAITS_FOR_FAN)));
    }
  }
}
