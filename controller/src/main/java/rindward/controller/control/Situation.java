package rindward.controller.control;

import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * All that a rule may look at.
 *
 * @param memory what the last decision left
 * @param room what the room should be and what it has
 * @param picture what the room is
 * @param now the tick's time
 */
record Situation(Memory memory, Room room, Picture picture, Tick now) {
  /** Tells whether an output runs at this moment. */
  boolean isOn(OutputKind kind) {
    return memory.switched(kind).on();
  }
}
