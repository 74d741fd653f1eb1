package rindward.controller.control;

import java.util.Map;
import rindward.hardware.OutputKind;

/**
 * What was decided for a room.
 *
 * @param rulings one for every output that the room has
 * @param memory to be handed to the next decision
 */
public record Decision(Map<OutputKind, Ruling> rulings, Memory memory) {
  public Decision {
    rulings = Map.copyOf(rulings);
  }
}
