package rindward.dashboard.alarms;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A page of what has happened to the alarms, newest first.
 *
 * @param next ask for the turns before this one; null at the end
 */
public record AlarmHistoryView(List<TurnView> turns, @Nullable String next) {

  public AlarmHistoryView {
    turns = List.copyOf(turns);
  }

  /**
   * One turn.
   *
   * @param what how it turned, as a word ("called", "over", "acknowledged", "shelved" ...)
   * @param by who brought it about; null where nobody did
   */
  public record TurnView(
      Instant at,
      String key,
      String name,
      @Nullable String room,
      @Nullable String thing,
      String what,
      @Nullable String by) {}
}
