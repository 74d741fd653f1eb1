package rindward.controller.alarm;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import rindward.controller.control.OutputDecision;
import rindward.controller.crop.Range;
import rindward.controller.room.Picture;
import rindward.controller.room.Room;
import rindward.controller.room.RoomDemand;
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
 * @param judgement what the tick made of the alarms
 */
public record ShedSnapshot(
    long tick,
    Instant at,
    Duration took,
    long overruns,
    Picture outdoors,
    List<RoomState> rooms,
    String store,
    Judgement judgement) {

  public ShedSnapshot {
    rooms = List.copyOf(rooms);
  }

  /** A snapshot that nobody has judged yet. */
  public ShedSnapshot(
      long tick,
      Instant at,
      Duration took,
      long overruns,
      Picture outdoors,
      List<RoomState> rooms,
      String store) {
    this(tick, at, took, overruns, outdoors, rooms, store, Judgement.NONE);
  }

  /** Returns the same snapshot with what was made of it. */
  public ShedSnapshot judged(Judgement next) {
    return new ShedSnapshot(tick, at, took, overruns, outdoors, rooms, store, next);
  }

  /**
   * One room after a tick.
   *
   * @param demand what was asked of it
   * @param failures outputs that could not be switched, with the sentence that says why
   */
  public record RoomState(
      Room room,
      RoomDemand demand,
      Picture picture,
      Map<OutputKind, OutputDecision> rulings,
      Map<OutputKind, String> failures) {
    public RoomState {
      rulings = Map.copyOf(rulings);
      failures = Map.copyOf(failures);
    }

    /** Tells whether nothing is asked of the room: whatever its air is, it is not wrong. */
    public boolean rests() {
      return demand.range() == null;
    }

    /** Returns the air the room should have now; that of its settings while it rests. */
    public Range range() {
      Range asked = demand.range();
      return asked == null ? room.range() : asked;
    }

    /** Tells whether an output is commanded on. */
    public boolean isOn(OutputKind kind) {
      OutputDecision ruling = rulings.get(kind);
      return ruling != null && ruling.on();
    }
  }
}
