package rindward.controller.daemon;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Alarms;
import rindward.controller.alarm.Priority;
import rindward.controller.notice.EscalationLine;
import rindward.controller.notice.EscalationState;
import rindward.controller.notice.SentNotice;
import rindward.controller.store.AlarmLog;
import rindward.controller.store.CallLog;
import rindward.controller.store.EventLog;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoredEvent;
import rindward.controller.store.samples.SampleStore;

/**
 * What the program knew when it last ended, so far as the alarms need it. A store that cannot be
 * read is no reason not to run the rooms: then the past is empty.
 *
 * @param noted the newest turn of every alarm
 * @param told who was told what
 * @param last the newest event, switching aside; empty for a new store
 * @param lastKept when the newest of all that is kept was; the epoch for a new store
 */
record RestoredState(
    Map<AlarmId, AlarmLog.Noted> noted,
    List<SentNotice> told,
    Optional<StoredEvent> last,
    Instant lastKept) {
  private static final Logger LOG = LoggerFactory.getLogger(RestoredState.class);

  /** An alarm that has not changed for longer is taken to be new. */
  private static final Duration REMEMBERED = Duration.ofDays(180);

  static RestoredState read(EventLog events, SampleStore samples, Instant now) {
    try {
      Optional<StoredEvent> last = events.newest();
      long lastKept =
          Math.max(samples.newestMillis().orElse(0), last.map(StoredEvent::atMillis).orElse(0L));
      return new RestoredState(
          new AlarmLog(events).newest(now.minus(REMEMBERED).toEpochMilli()),
          new CallLog(events).since(now.minus(EscalationState.LONGEST_CALL).toEpochMilli()),
          last,
          Instant.ofEpochMilli(lastKept));
    } catch (StoreException e) {
      LOG.error("How the alarms stood could not be read: {}", e.getMessage());
      return new RestoredState(Map.of(), List.of(), Optional.empty(), Instant.EPOCH);
    }
  }

  /** Returns the alarms as they stood, on a clock of epoch seconds. */
  Alarms alarms() {
    Map<AlarmId, Alarm> all = new HashMap<>();
    noted.forEach((id, last) -> all.put(id, last.turn().alarm()));
    return new Alarms(all, Map.of(), List.of());
  }

  /** Returns when each alarm was last noted. */
  Map<AlarmId, Instant> times() {
    return noted.entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey, e -> Instant.ofEpochMilli(e.getValue().atMillis())));
  }

  /** Returns who had been called, and what waited for a digest. */
  EscalationState rota(AlarmTable table, Instant now) {
    Map<AlarmId, Instant> waiting = new HashMap<>();
    times()
        .forEach(
            (id, at) -> {
              boolean canWait = table.row(id.kind()).priority() != Priority.WAKE;
              if (canWait
                  && alarms().alarm(id).isAnnounced()
                  && at.isAfter(now.minus(EscalationLine.LONGEST_DIGEST_WAIT))) {
                waiting.put(id, at);
              }
            });
    return EscalationState.restored(told, waiting);
  }
}
