package rindward.controller.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rindward.controller.alarm.AlarmId;
import rindward.controller.notice.NotificationReason;
import rindward.controller.notice.NotificationTask;
import rindward.controller.notice.SentNotice;

/** Who was told what, among the events, so that a restart tells nobody twice. For any thread. */
public final class CallLog {
  /** The kind of event that this reads and writes. */
  public static final String KIND = "notice";

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final EventLog events;

  public CallLog(EventLog events) {
    this.events = events;
  }

  private record Line(NotificationReason occasion, String person, List<String> alarms) {}

  /** Returns the text of an event. */
  public static String text(NotificationTask errand) {
    try {
      return JSON.writeValueAsString(
          new Line(
              errand.occasion(),
              errand.person(),
              errand.alarms().stream().map(AlarmId::key).toList()));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("an errand cannot be written: " + errand, e);
    }
  }

  /** Returns who was told what since {@code fromMillis}, oldest first. */
  public List<SentNotice> since(long fromMillis) {
    List<StoredEvent> newestFirst =
        events.page(KIND, fromMillis, Long.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE);
    List<SentNotice> told = new ArrayList<>(newestFirst.size());
    for (int i = newestFirst.size() - 1; i >= 0; i--) {
      told(newestFirst.get(i)).ifPresent(told::add);
    }
    return told;
  }

  private static Optional<SentNotice> told(StoredEvent event) {
    try {
      Line line = JSON.readValue(event.text(), Line.class);
      List<AlarmId> alarms =
          line.alarms.stream().map(AlarmId::of).flatMap(Optional::stream).toList();
      return Optional.of(
          new SentNotice(
              Instant.ofEpochMilli(event.atMillis()),
              new NotificationTask(line.occasion, line.person, alarms)));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }
}
