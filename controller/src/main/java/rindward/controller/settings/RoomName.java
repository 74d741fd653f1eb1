package rindward.controller.settings;

import java.util.Map;

/** The room that a probe or an output names, which must be one that the file declares. */
final class RoomName {
  private RoomName() {}

  static String read(TableReader table, Map<String, TableReader> rooms) {
    String room = table.required("room", Kind.TEXT);
    if (table.has("room") && !rooms.containsKey(room)) {
      table.refuse(
          "room",
          "no room of that name is declared (declared: " + String.join(", ", rooms.keySet()) + ")");
    }
    return room;
  }
}
