package rindward.controller.daemon;

import java.time.Instant;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;

/**
 * Tells what is asked of a room at present. Asked once a tick by the control loop; must not wait.
 */
@FunctionalInterface
public interface DemandSource {
  /** What the settings say and nothing else. */
  DemandSource AS_SET = (room, at) -> RoomDemand.of(room);

  /** Returns what is asked of a room at a moment. */
  RoomDemand of(Room room, Instant at);
}
