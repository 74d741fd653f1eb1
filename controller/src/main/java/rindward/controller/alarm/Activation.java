package rindward.controller.alarm;

/**
 * One alarm from the moment it was shown to the moment it went, for judging how well the alarms
 * behave. What was hidden is none.
 *
 * @param onSeconds when it was shown
 * @param offSeconds when its condition was gone; {@link #STILL_ON} if it lasts
 */
public record Activation(AlarmId id, long onSeconds, long offSeconds) {
  /** Stands for an alarm that has not gone yet. */
  public static final long STILL_ON = Long.MAX_VALUE;
}
