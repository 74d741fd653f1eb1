package rindward.controller.settings;

import java.util.Map;

/** The room that a probe or an output names, which must be one that the file declares. */
final class RoomName {
  private RoomName() {}

  static String read(TableReader table, Map<String, TableReader> rooms) {
    int before = table.problems().count();
    String room = table.required("room", Kind.TEXT);
    if (table.problems().count() == before && !rooms.containsKey(room)) {
      table.refuse(
          "room",
          "no room of that name is declared (declared: " + String.join(", ", rooms.keySet()) + ")");
    }
    return room;
  }
}
