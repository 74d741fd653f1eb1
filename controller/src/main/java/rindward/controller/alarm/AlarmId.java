package rindward.controller.alarm;

import java.util.Optional;

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

  /**
   * Returns the alarm's word in addresses, messages and commands: {@code chilling@storage}, {@code
   * probe-silent@storage/storage-air}, {@code disk-nearly-full}.
   */
  public String key() {
    return kind.word() + (room.isEmpty() ? "" : "@" + room) + (thing.isEmpty() ? "" : "/" + thing);
  }

  /** Returns the alarm of that word; empty if it names none. */
  public static Optional<AlarmId> of(String key) {
    int slash = key.indexOf('/');
    String thing = slash < 0 ? "" : key.substring(slash + 1);
    String before = slash < 0 ? key : key.substring(0, slash);
    int at = before.indexOf('@');
    String room = at < 0 ? "" : before.substring(at + 1);
    String word = at < 0 ? before : before.substring(0, at);
    return AlarmKind.of(word).map(kind -> new AlarmId(kind, room, thing));
  }

  /** Tells whether both are about the same room, or one of them about the whole shed. */
  boolean touches(AlarmId other) {
    return room.isEmpty() || other.room.isEmpty() || other.room.equals(room);
  }
}
