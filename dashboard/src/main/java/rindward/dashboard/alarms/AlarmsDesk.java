package rindward.dashboard.alarms;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** What the alarms page asks of the controller. Called from any web thread. */
public interface AlarmsDesk {

  /** Returns the alarms as they stand, from what is in memory. */
  AlarmsView alarms();

  /**
   * Returns a page of the history.
   *
   * @param before the mark of the page before; null for the first
   * @throws IllegalArgumentException when the mark is none of ours
   */
  AlarmHistoryView history(@Nullable String before, int size);

  /** Returns the table of alarms. */
  AlarmRulesView rules();

  /**
   * Takes an answer; it takes effect at the next tick.
   *
   * @throws AlarmRefused when it cannot be taken
   */
  void answer(Answer answer) throws AlarmRefused;

  /**
   * Takes that somebody works in a room until a time; a time that has passed ends it.
   *
   * @throws AlarmRefused when it cannot be taken
   */
  void work(String room, Instant until, String by, String request) throws AlarmRefused;

  /** Returns the present moment by the controller's clock. */
  Instant now();

  /**
   * What a person says of an alarm.
   *
   * @param alarm its key
   * @param answer as a word ("acknowledged", "shelved" ...)
   * @param until the end of a shelf; null for any other answer
   * @param code what was read on the board; null for what needs none
   * @param by who says so
   * @param request the same for the same answer sent again
   */
  record Answer(
      String alarm,
      String answer,
      @Nullable Instant until,
      @Nullable String code,
      String by,
      String request) {}
}
