package rindward.controller.control;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import rindward.hardware.OutputKind;

/**
 * What was decided for a room.
 *
 * @param rulings one for every output that the room has
 * @param memory to be handed to the next decision
 * @param beyond what is wrong that no output of the room can put right; null if nothing
 */
public record RoomDecision(
    Map<OutputKind, OutputDecision> rulings, ControlMemory memory, @Nullable Reason beyond) {
  public RoomDecision {
    rulings = Map.copyOf(rulings);
  }
}
