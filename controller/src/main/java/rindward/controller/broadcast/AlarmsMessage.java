package rindward.controller.broadcast;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rindward.controller.alarm.Alarm;
import rindward.controller.alarm.AlarmId;
import rindward.controller.alarm.AlarmRow;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.Judgement;

/** The open alarms as they are published, the most urgent first; an empty list is good news. */
record AlarmsMessage(Instant at, List<AlarmMessage> open) {

  /** One alarm; room and thing are null where the whole shed or the room itself is meant. */
  record AlarmMessage(
      String key,
      String name,
      @Nullable String room,
      @Nullable String thing,
      String priority,
      String state,
      Instant since,
      String action) {}

  static AlarmsMessage of(Judgement judgement, AlarmTable table, Instant at) {
    return new AlarmsMessage(
        at, judgement.open(table).stream().map(id -> alarm(id, judgement, table)).toList());
  }

  private static AlarmMessage alarm(AlarmId id, Judgement judgement, AlarmTable table) {
    AlarmRow row = table.row(id.kind());
    Alarm alarm = judgement.alarms().alarm(id);
    return new AlarmMessage(
        id.key(),
        row.name(),
        id.room().isEmpty() ? null : id.room(),
        id.thing().isEmpty() ? null : id.thing(),
        word(row.priority()),
        word(alarm.state()),
        judgement.wall(alarm.condition().sinceSeconds()),
        judgement.facts().rooms().stream()
            .filter(room -> room.room().equals(id.room()))
            .findFirst()
            .map(room -> row.actionWith(room.outputs()))
            .orElse(row.action()));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
