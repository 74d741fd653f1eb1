package rindward.controller.snapshot;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import rindward.controller.control.Ruling;
import rindward.controller.crop.Range;
import rindward.controller.room.Order;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.hardware.OutputKind;

/**
 * The shed after one tick. Published by the control loop through one volatile reference; readers
 * never wait and never see half a tick.
 *
 * @param tick how many ticks there have been
 * @param at the tick's time
 * @param took how long the tick needed
 * @param overruns how many ticks were skipped because one took too long
 * @param outdoors what the outdoor probes say
 * @param rooms in the order of the settings
 * @param store how the store is, in one sentence; empty when all is well
 */
public record Snapshot(
    long tick,
    Instant at,
    Duration took,
    long overruns,
    Picture outdoors,
    List<RoomState> rooms,
    String store) {

  public Snapshot {
    rooms = List.copyOf(rooms);
  }

  /**
   * One room after a tick.
   *
   * @param order what was asked of it
   * @param failures outputs that could not be switched, with the sentence that says why
   */
  public record RoomState(
      Room room,
      Order order,
      Picture picture,
      Map<OutputKind, Ruling> rulings,
      Map<OutputKind, String> failures) {
    public RoomState {
      rulings = Map.copyOf(rulings);
      failures = Map.copyOf(failures);
    }

    /** Returns the air the room should have now; that of its settings while it rests. */
    public Range range() {
      Range asked = order.range();
      return asked == null ? room.range() : asked;
    }
  }
}
