package rindward.controller.diagnosis;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.Recorded;
import rindward.controller.room.Output;
import rindward.controller.room.Room;

/**
 * What a newer version said and this one cannot read, and what that forbids: it may have been a
 * lock-out. Nobody switches on by hand in a room that it is about; a room of whose outputs it
 * speaks is only observed.
 */
public record NewerEntries(List<NewerEntry> all) {
  /** Nothing. */
  public static final NewerEntries NONE = new NewerEntries(List.of());

  /** Returns those that stand in the journal. */
  public static NewerEntries in(List<Recorded> journal) {
    return new NewerEntries(
        journal.stream()
            .map(Recorded::entry)
            .filter(NewerEntry.class::isInstance)
            .map(NewerEntry.class::cast)
            .toList());
  }

  /** Tells whether one may be about a room or one of its outputs. */
  public boolean isAbout(Room room) {
    return commands(room) || all.stream().anyMatch(entry -> entry.isAboutRoom(room.name()));
  }

  /** Tells whether one may be a command to one of its outputs. */
  public boolean commands(Room room) {
    return all.stream().anyMatch(entry -> commands(entry, room));
  }

  private static boolean commands(NewerEntry entry, Room room) {
    boolean namesRoom = entry.isAboutRoom(room.name());
    boolean namesOutput =
        room.outputs().values().stream()
            .map(Output::name)
            .anyMatch(name -> entry.outputs().contains(name) || entry.places().contains(name));
    return namesOutput || (namesRoom && !entry.outputs().isEmpty());
  }

  /** Returns what is called about: that there are any, and each room that is only observed. */
  public Set<Finding> findings(List<Room> rooms) {
    Set<Finding> found = new HashSet<>();
    if (!all.isEmpty()) {
      found.add(new Finding(AlarmKind.NEWER_ENTRIES, ""));
    }
    for (Room room : rooms) {
      if (commands(room)) {
        found.add(new Finding(AlarmKind.UNREAD_COMMAND, room.name()));
      }
    }
    return found;
  }
}
