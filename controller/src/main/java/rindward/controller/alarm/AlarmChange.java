package rindward.controller.alarm;

/**
 * What a tick or a person changed about one alarm: a line of the history, and the only thing that a
 * notice is ever made of.
 *
 * @param from the state a person saw before
 * @param to the state a person sees now
 * @param isCall whether somebody has to be told: once for each occurrence
 * @param isOver whether the condition that somebody was told of has now gone
 */
public record AlarmChange(
    AlarmId id, AlarmState from, AlarmState to, boolean isCall, boolean isOver) {

  /** Tells whether there is anything to note. */
  boolean isSomething() {
    return from != to || isCall || isOver;
  }
}
