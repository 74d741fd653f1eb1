package rindward.controller.notice;

import java.util.List;
import rindward.controller.alarm.AlarmId;

/**
 * One person is to be told something now.
 *
 * @param person name
 * @param alarms what about; one, but for a digest
 */
public record NotificationTask(NotificationReason occasion, String person, List<AlarmId> alarms) {
  public NotificationTask {
    alarms = List.copyOf(alarms);
  }
}
