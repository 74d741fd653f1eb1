package rindward.controller.watch;

import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.Alarms;

/**
 * One turn in the life of an alarm, complete enough to go on from after a restart.
 *
 * @param alarm how it stands after it
 * @param by who brought it about; empty where nobody did
 */
public record Turn(AlarmChange change, Alarm alarm, String by) {
  static Turn of(AlarmChange change, Alarms after, String by) {
    return new Turn(change, after.alarm(change.id()), by);
  }
}
