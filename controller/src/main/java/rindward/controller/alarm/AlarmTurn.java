package rindward.controller.alarm;

/**
 * One turn in the life of an alarm, complete enough to go on from after a restart.
 *
 * @param alarm how it stands after it
 * @param by who brought it about; empty where nobody did
 */
public record AlarmTurn(AlarmChange change, Alarm alarm, String by) {
  static AlarmTurn of(AlarmChange change, Alarms after, String by) {
    return new AlarmTurn(change, after.alarm(change.id()), by);
  }
}
