package rindward.controller.control;

import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;

/** Decides what a room's outputs do. */
@FunctionalInterface
public interface Controller {
  /**
   * Decides what a room's outputs do from now on. Pure; called once a tick.
   *
   * @param memory what the last decision of the same room left
   * @param demand what is asked of the room
   * @param picture what its probes say
   * @param outdoors what the outdoor probes say
   */
  RoomDecision decide(
      ControlMemory memory,
      Room room,
      RoomDemand demand,
      Picture picture,
      Picture outdoors,
      Tick now);
}
