package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.Set;

/** Rooms are kept by number, so that a chunk's key stays small. */
public final class RoomIds {
  private RoomIds() {}

  /** Returns the room's number, giving it one at its first sample. */
  public static long idOf(Connection connection, String name) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement("INSERT OR IGNORE INTO room (name) VALUES (?)")) {
      insert.setString(1, name);
      insert.executeUpdate();
    }
    return find(connection, name);
  }

  /** Returns the names of those of which anything was ever kept. */
  public static Set<String> names(Connection connection) throws SQLException {
    try (PreparedStatement select = connection.prepareStatement("SELECT name FROM room");
        ResultSet rows = select.executeQuery()) {
      Set<String> names = new HashSet<>();
      while (rows.next()) {
        names.add(rows.getString(1));
      }
      return names;
    }
  }

  /** Returns the room's number; 0 when nothing was ever kept of it. */
  public static long find(Connection connection, String name) throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement("SELECT id FROM room WHERE name = ?")) {
      select.setString(1, name);
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? row.getLong(1) : 0;
      }
    }
  }
}
