package rindward.controller.control;

import rindward.controller.room.Order;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;

/** Decides what a room's outputs do. */
@FunctionalInterface
public interface Controller {
  /**
   * Decides what a room's outputs do from now on. Pure; called once a tick.
   *
   * @param memory what the last decision of the same room left
   * @param order what is asked of the room
   * @param picture what its probes say
   * @param outdoors what the outdoor probes say
   */
  RoomDecision decide(
      ControlMemory memory, Room room, Order order, Picture picture, Picture outdoors, Tick now);
}
