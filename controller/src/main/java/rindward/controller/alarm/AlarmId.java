package rindward.controller.alarm;

/**
 * Which alarm: a kind at one place. Two open doors are two alarms.
 *
 * @param room name of the room; empty for the whole shed
 * @param thing name of the probe, output or lot; empty where the room itself is meant
 */
public record AlarmId(AlarmKind kind, String room, String thing) {
  /** Returns an alarm about a whole room. */
  public static AlarmId of(AlarmKind kind, String room) {
    return new AlarmId(kind, room, "");
  }

  /** Returns an alarm about the whole shed. */
  public static AlarmId ofShed(AlarmKind kind) {
    return new AlarmId(kind, "", "");
  }

  /** Tells whether both are about the same room, or one of them about the whole shed. */
  boolean touches(AlarmId other) {
    return room.isEmpty() || other.room.isEmpty() || other.room.equals(room);
  }
}
