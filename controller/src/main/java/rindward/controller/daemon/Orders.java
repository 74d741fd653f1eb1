package rindward.controller.daemon;

import java.time.Instant;
import rindward.controller.room.Order;
import rindward.controller.room.Room;

/**
 * Tells what is asked of a room at present. Asked once a tick by the control loop; must not wait.
 */
@FunctionalInterface
public interface Orders {
  /** What the settings say and nothing else. */
  Orders AS_SET = (room, at) -> Order.of(room);

  /** Returns what is asked of a room at a moment. */
  Order of(Room room, Instant at);
}
