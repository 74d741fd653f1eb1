package rindward.controller.broadcast;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.util.function.BiConsumer;
import rindward.controller.alarm.AlarmTable;
import rindward.controller.alarm.ShedSnapshot;
import rindward.controller.alarm.ShedSnapshot.RoomState;
import rindward.controller.diagnosis.LotNotes;

/**
 * Puts the shed's state into messages, each under its topic. What receives them keeps the latest
 * only, so nothing piles up while the broker is away.
 */
public final class Broadcast {
  /** The topic of one room, followed by its name. */
  static final String ROOM = "rooms/";

  static final String LOTS = "lots";
  static final String ALARMS = "alarms";

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .addModule(new JavaTimeModule())
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();

  private final AlarmTable table;

  public Broadcast(AlarmTable table) {
    this.table = table;
  }

  /**
   * Hands over every message.
   *
   * @param to takes a topic, below the farm's own, and a text
   */
  public void publish(ShedSnapshot snapshot, LotNotes lots, BiConsumer<String, String> to) {
    for (RoomState room : snapshot.rooms()) {
      to.accept(ROOM + level(room.room().name()), json(RoomMessage.of(room, snapshot.at())));
    }
    to.accept(LOTS, json(LotsMessage.of(lots.lots(), snapshot.at())));
    to.accept(ALARMS, json(AlarmsMessage.of(snapshot.judgement(), table, snapshot.at())));
  }

  /** Returns a name as one level of a topic. */
  static String level(String name) {
    return name.replaceAll("[/+#\\x00\\s]+", "-");
  }

  static String json(Object message) {
    try {
      return JSON.writeValueAsString(message);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a message cannot be written", e);
    }
  }
}
