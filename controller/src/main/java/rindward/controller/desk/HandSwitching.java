package rindward.controller.desk;

import java.time.Instant;
import java.util.Optional;
import rindward.controller.room.ManualCommand;
import rindward.controller.room.Order;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/** Takes what people switch by hand, and tells what is asked of a room. For any thread. */
public interface HandSwitching {

  /** Returns what is asked of a room at a moment. */
  Order of(Room room, Instant at);

  /**
   * Takes a command; a later one for the same output stands in for it.
   *
   * @return why it cannot be, in one sentence; empty when it was taken
   */
  Optional<String> command(String room, ManualCommand command, Instant now);

  /** Lets an output run by itself again. */
  void release(String room, OutputKind kind, Instant now);
}
