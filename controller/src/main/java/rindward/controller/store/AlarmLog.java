package rindward.controller.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmChange;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmState;
import rindward.controller.alarm.AlarmTurn;
import rindward.controller.alarm.Delayed;

/**
 * The history of the alarms among the events, each turn complete, so that the newest of every alarm
 * is also how it stands: after a restart nothing that was acknowledged calls again. Alarms here
 * count epoch seconds. For any thread.
 */
public final class AlarmLog {
  /** The kind of event that this reads and writes. */
  public static final String KIND = "alarm";

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final EventLog events;

  public AlarmLog(EventLog events) {
    this.events = events;
  }

  /** A turn and when it was noted. */
  public record Noted(long id, long atMillis, AlarmTurn turn) {}

  /** How a turn is written down. */
  private record Line(
      String alarm,
      AlarmState from,
      AlarmState to,
      boolean call,
      boolean over,
      String by,
      AlarmState life,
      boolean present,
      boolean active,
      boolean announced,
      long since,
      @Nullable Long shelvedUntil,
      boolean suppressed,
      boolean outOfService) {}

  /** Returns the text of an event; the alarm in it must count epoch seconds. */
  public static String text(AlarmTurn turn) {
    AlarmChange change = turn.change();
    Alarm alarm = turn.alarm();
    boolean isShelved = alarm.shelvedUntilSeconds() != Alarm.NOT_SHELVED;
    try {
      return JSON.writeValueAsString(
          new Line(
              change.id().key(),
              change.from(),
              change.to(),
              change.isCall(),
              change.isOver(),
              turn.by(),
              alarm.life(),
              alarm.condition().present(),
              alarm.condition().active(),
              alarm.isAnnounced(),
              alarm.condition().sinceSeconds(),
              isShelved ? alarm.shelvedUntilSeconds() : null,
              alarm.isSuppressed(),
              alarm.isOutOfService()));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("a turn cannot be written: " + turn, e);
    }
  }

  /**
   * Returns a page of the history, newest first; for the first page give {@link Long#MAX_VALUE}
   * twice, for the next one time and id of the last turn of the page before.
   */
  public List<Noted> page(long beforeMillis, long beforeId, int size) {
    return events.page(KIND, 0, beforeMillis, beforeId, size).stream()
        .map(AlarmLog::noted)
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * Returns the turns from {@code fromMillis} up to {@code toMillis}, newest first; of more than
   * {@code most}, the newest.
   */
  public List<Noted> between(long fromMillis, long toMillis, int most) {
    return events.page(KIND, fromMillis, toMillis, 0, most).stream()
        .map(AlarmLog::noted)
        .flatMap(Optional::stream)
        .toList();
  }

  /** Returns the newest turn of every alarm since {@code fromMillis}. */
  public Map<AlarmId, Noted> newest(long fromMillis) {
    Map<AlarmId, Noted> newest = new HashMap<>();
    events.page(KIND, fromMillis, Long.MAX_VALUE, Long.MAX_VALUE, Integer.MAX_VALUE).stream()
        .map(AlarmLog::noted)
        .flatMap(Optional::stream)
        .forEach(noted -> newest.putIfAbsent(noted.turn().change().id(), noted));
    return newest;
  }

  /** Returns the turn of an event; nothing for one that an earlier or later program wrote. */
  private static Optional<Noted> noted(StoredEvent event) {
    try {
      Line line = JSON.readValue(event.text(), Line.class);
      return AlarmId.of(line.alarm)
          .map(id -> new Noted(event.id(), event.atMillis(), turn(id, line)));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  private static AlarmTurn turn(AlarmId id, Line line) {
    return new AlarmTurn(
        new AlarmChange(id, line.from, line.to, line.call, line.over),
        new Alarm(
            line.life,
            new Delayed(line.present, line.since, line.active),
            line.announced,
            line.shelvedUntil == null ? Alarm.NOT_SHELVED : line.shelvedUntil,
            line.suppressed,
            line.outOfService),
        line.by);
  }
}
