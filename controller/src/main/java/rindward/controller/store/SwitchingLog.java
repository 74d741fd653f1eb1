package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which output was switched when and why, to look up later. Written by {@code SampleLog} with the
 * samples of the same time; readable once flushed. For any thread.
 */
public final class SwitchingLog {
  /** Enough to meet each output of a room, unless one of them is hardly ever switched. */
  private static final int LOOK_BACK = 100;

  private static final String OF_ROOM =
      " FROM switching WHERE output IN (SELECT output.id FROM output"
          + " JOIN room ON room.id = output.room WHERE room.name = ?)";

  private final Database database;

  public SwitchingLog(Database database) {
    this.database = database;
  }

  /** Is told of one switching after another. */
  @FunctionalInterface
  public interface Visitor {
    void switched(String output, long atMillis, boolean isOn);
  }

  /**
   * Hands over, oldest first, what was switched in a room from {@code fromMillis} up to {@code
   * toMillis} (not included), and before that the last few switchings that tell how things stood.
   */
  public void between(String room, long fromMillis, long toMillis, Visitor visitor) {
    int unused =
        database.read(
            connection -> {
              Map<Integer, String> names = names(connection, room);
              long from = lookBack(connection, room, fromMillis);
              try (PreparedStatement select =
                  connection.prepareStatement(
                      "SELECT at, output, is_on"
                          + OF_ROOM
                          + " AND at >= ? AND at < ?"
                          + " ORDER BY at")) {
                select.setString(1, room);
                select.setLong(2, from);
                select.setLong(3, toMillis);
                return forEach(select, names, visitor);
              }
            });
  }

  /**
   * Returns the newest {@code most} switchings of a room from {@code fromMillis} up to {@code
   * toMillis} (not included), newest first.
   */
  public List<StoredSwitching> newest(String room, long fromMillis, long toMillis, int most) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT at, output.name, is_on, reason.text FROM switching"
                      + " JOIN output ON output.id = switching.output"
                      + " JOIN room ON room.id = output.room"
                      + " JOIN reason ON reason.id = switching.reason"
                      + " WHERE room.name = ? AND at >= ? AND at < ?"
                      + " ORDER BY at DESC, output.id DESC LIMIT ?")) {
            select.setString(1, room);
            select.setLong(2, fromMillis);
            select.setLong(3, toMillis);
            select.setInt(4, most);
            return switchings(select, room);
          }
        });
  }

  /** Returns when the newest switching that is flushed was; 0 for none. */
  public long newestMillis() {
    return database.read(
        connection -> {
          try (PreparedStatement select =
                  connection.prepareStatement("SELECT max(at) FROM switching");
              ResultSet row = select.executeQuery()) {
            return row.next() ? row.getLong(1) : 0;
          }
        });
  }

  /**
   * Returns how often an output was switched on after {@code afterMillis} and up to {@code
   * toMillis} (included).
   */
  public int closings(String room, String output, long afterMillis, long toMillis) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT count(*) FROM switching WHERE at > ? AND at <= ? AND is_on"
                      + " AND output = (SELECT output.id FROM output"
                      + " JOIN room ON room.id = output.room"
                      + " WHERE room.name = ? AND output.name = ?)")) {
            select.setLong(1, afterMillis);
            select.setLong(2, toMillis);
            select.setString(3, room);
            select.setString(4, output);
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? row.getInt(1) : 0;
            }
          }
        });
  }

  /** Appends switchings in the caller's transaction. */
  public static void append(Connection connection, List<StoredSwitching> switchings)
      throws SQLException {
    try (PreparedStatement output =
            connection.prepareStatement("INSERT OR IGNORE INTO output (room, name) VALUES (?, ?)");
        PreparedStatement reason =
            connection.prepareStatement("INSERT OR IGNORE INTO reason (text) VALUES (?)");
        PreparedStatement insert =
            connection.prepareStatement(
                "INSERT OR REPLACE INTO switching (at, output, is_on, reason) SELECT ?,"
                    + " (SELECT id FROM output WHERE room = ? AND name = ?), ?,"
                    + " (SELECT id FROM reason WHERE text = ?)")) {
      for (StoredSwitching s : switchings) {
        long room = RoomIds.idOf(connection, s.room());
        output.setLong(1, room);
        output.setString(2, s.output());
        output.executeUpdate();
        reason.setString(1, s.reason());
        reason.executeUpdate();
        insert.setLong(1, s.atMillis());
        insert.setLong(2, room);
        insert.setString(3, s.output());
        insert.setBoolean(4, s.isOn());
        insert.setString(5, s.reason());
        insert.executeUpdate();
      }
    }
  }

  private static Map<Integer, String> names(Connection connection, String room)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT output.id, output.name FROM output"
                + " JOIN room ON room.id = output.room WHERE room.name = ?")) {
      select.setString(1, room);
      Map<Integer, String> names = new HashMap<>();
      try (ResultSet rows = select.executeQuery()) {
        while (rows.next()) {
          names.put(rows.getInt(1), rows.getString(2));
        }
      }
      return names;
    }
  }

  /** Returns when the oldest of the last few switchings before {@code fromMillis} was. */
  private static long lookBack(Connection connection, String room, long fromMillis)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT min(at) FROM (SELECT at" + OF_ROOM + " AND at < ? ORDER BY at DESC LIMIT ?)")) {
      select.setString(1, room);
      select.setLong(2, fromMillis);
      select.setInt(3, LOOK_BACK);
      try (ResultSet row = select.executeQuery()) {
        long oldest = row.next() ? row.getLong(1) : 0;
        return row.wasNull() ? fromMillis : oldest;
      }
    }
  }

  private static int forEach(PreparedStatement select, Map<Integer, String> names, Visitor visitor)
      throws SQLException {
    int count = 0;
    try (ResultSet rows = select.executeQuery()) {
      while (rows.next()) {
        String output = names.get(rows.getInt(2));
        if (output != null) {
          visitor.switched(output, rows.getLong(1), rows.getInt(3) != 0);
          count++;
        }
      }
    }
    return count;
  }

  private static List<StoredSwitching> switchings(PreparedStatement select, String room)
      throws SQLException {
    List<StoredSwitching> found = new ArrayList<>();
    try (ResultSet rows = select.executeQuery()) {
      while (rows.next()) {
        found.add(
            new StoredSwitching(
                rows.getLong(1), room, rows.getString(2), rows.getInt(3) != 0, rows.getString(4)));
      }
    }
    return found;
  }
}
