package rindward.dashboard.rooms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What happened in a room over a stretch of time: what the shed called about, and lots that came
 * and went. Each list is in time order.
 */
public record MarksView(Instant from, Instant to, List<CalledView> alarms, List<MovedView> moves) {
  public MarksView {
    alarms = List.copyOf(alarms);
    moves = List.copyOf(moves);
  }

  /**
   * One alarm while it lasted.
   *
   * @param name in a few words
   * @param room null for one of the whole shed, which every room shows
   * @param thing name of the probe, output or lot; null where the room itself is meant
   * @param wakes whether it calls at any hour
   * @param began may lie before the stretch
   * @param over null while it lasts
   */
  public record CalledView(
      String key,
      String name,
      @Nullable String room,
      @Nullable String thing,
      boolean wakes,
      Instant began,
      @Nullable Instant over) {}

  /**
   * One lot that came in or went out.
   *
   * @param place where it came from, null for the field; or where it went, null when its last fruit
   *     was gone
   */
  public record MovedView(
      Instant at,
      String lot,
      String cropName,
      String variety,
      boolean isIn,
      @Nullable String place) {}
}
