package rindward.controller.room;

import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rindward.controller.crop.CropGuide;
import rindward.controller.crop.Range;
import rindward.controller.journal.RoomAsked;
import rindward.controller.lot.Lots;
import rindward.hardware.OutputKind;

/**
 * What is asked of a room at present, by its grower and by what lies in it. A {@link Room} is what
 * it has; this is what it is for, and it changes while the program runs.
 *
 * @param range the air it should have; null lets it rest, with everything off
 * @param slideMilliCPerDay how fast the range may come down to a new one, so that fruit is not
 *     shocked; 0 lets it jump
 * @param stock what lies in it
 * @param commands what was switched by hand
 * @param isObserved whether it is only observed at present, with everything off
 */
public record RoomDemand(
    @Nullable Range range,
    int slideMilliCPerDay,
    Stock stock,
    List<ManualCommand> commands,
    boolean isObserved) {
  /** What is asked of a room that is run. */
  public RoomDemand(
      @Nullable Range range, int slideMilliCPerDay, Stock stock, List<ManualCommand> commands) {
    this(range, slideMilliCPerDay, stock, commands, false);
  }

  public RoomDemand {
    commands = List.copyOf(commands);
  }

  /** Returns what a room is asked for when nobody has said more than its settings. */
  public static RoomDemand of(Room room) {
    return new RoomDemand(room.range(), room.slideMilliCPerDay(), Stock.UNTOLD, List.of());
  }

  /**
   * Returns what is asked of a room by what was said. A room that has held a lot and holds none any
   * more rests, unless a range was asked for.
   *
   * @param asked what somebody wants instead of what the settings say; null for nothing
   * @param finishedPlaces where lots lay that are over
   */
  public static RoomDemand of(
      Room room,
      @Nullable RoomAsked asked,
      Lots lots,
      Set<String> finishedPlaces,
      CropGuide crops,
      Instant now) {
    Stock stock = Stock.of(room.name(), lots, crops, now);
    int usualSlide = room.slideMilliCPerDay();
    if (asked == null) {
      boolean isDone =
          stock.newest() == null
              && (finishedPlaces.contains(room.name()) || Stock.hasComeTo(room.name(), lots, now));
      return new RoomDemand(isDone ? null : room.range(), usualSlide, stock, List.of());
    }
    int slide = asked.slideMilliCPerDay() == 0 ? usualSlide : asked.slideMilliCPerDay();
    return new RoomDemand(asked.rests() ? null : asked.range(), slide, stock, List.of());
  }

  /** Returns the same with what holds it by hand. */
  public RoomDemand held(List<ManualCommand> byHand, boolean observed) {
    return new RoomDemand(range, slideMilliCPerDay, stock, byHand, observed);
  }

  /** Returns the command that holds an output, or null. */
  public @Nullable ManualCommand command(OutputKind kind) {
    for (int i = 0; i < commands.size(); i++) {
      if (commands.get(i).kind() == kind) {
        return commands.get(i);
      }
    }
    return null;
  }
}
