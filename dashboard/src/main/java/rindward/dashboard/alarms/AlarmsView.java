package rindward.dashboard.alarms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The alarms as they stand.
 *
 * @param at the moment this was true, by the controller's clock
 * @param open what calls, the most urgent first
 * @param silent what is silent because somebody said so
 * @param accepted what was accepted as the best that can be had, and is silent
 * @param rooms the rooms in which somebody can say that they work
 */
public record AlarmsView(
    Instant at,
    List<OpenView> open,
    List<OpenView> silent,
    List<AcceptedView> accepted,
    List<WorkView> rooms) {

  public AlarmsView {
    open = List.copyOf(open);
    silent = List.copyOf(silent);
    accepted = List.copyOf(accepted);
    rooms = List.copyOf(rooms);
  }

  /**
   * One alarm.
   *
   * @param key its word in every request
   * @param name what it is, in a few words
   * @param room where; null for the whole shed
   * @param thing which probe, output or lot; null where the room or shed itself is meant
   * @param isUrgent whether it is of the kind that wakes people
   * @param state how it stands, as a word ("unacknowledged", "acknowledged", "returned" ...)
   * @param isOver whether it has gone and only waits to be seen or reset
   * @param needsAnswer whether somebody still has to say that they have seen it
   * @param canBeAccepted whether it may be accepted as the best that can be had
   * @param needsCode whether only somebody on the spot, who reads its code there, may reset it or
   *     take it out of service
   * @param since when it began; of one that is over, when that which it called about was gone
   * @param until when its shelf ends; null without a shelf
   * @param howBad one sentence with the room's own figures; null where there is none
   * @param action what to do, in this very room
   * @param cause what usually lies behind it
   * @param consequence what follows if nobody does anything
   */
  public record OpenView(
      String key,
      String name,
      @Nullable String room,
      @Nullable String thing,
      boolean isUrgent,
      String state,
      boolean isOver,
      boolean needsAnswer,
      boolean canBeAccepted,
      boolean needsCode,
      Instant since,
      @Nullable Instant until,
      @Nullable String howBad,
      String action,
      String cause,
      String consequence) {}

  /** Something accepted. */
  public record AcceptedView(
      String key, String name, @Nullable String room, @Nullable String thing) {}

  /**
   * A room and whether somebody works in it.
   *
   * @param until when that ends by itself; null while nobody does
   */
  public record WorkView(String room, @Nullable Instant until) {}
}
