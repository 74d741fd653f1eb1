package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What the controller did and why, to look up later. Written by {@link SampleLog} with the samples
 * of the same time; readable once flushed. For any thread.
 */
public final class EventLog {
  private static final String OF_ROOM =
      "SELECT event.id, at, room.name, kind, text"
          + " FROM event JOIN room ON room.id = event.room"
          + " WHERE room.name = ? AND kind IN ('on', 'off')";

  /** Enough to meet each output of a room, unless one of them is hardly ever switched. */
  private static final int LOOK_BACK = 100;

  private final Database database;

  public EventLog(Database database) {
    this.database = database;
  }

  /**
   * Returns a page of events at or after {@code fromMillis}, newest first. For the first page, give
   * the end of the time asked for (not included) and 0; for the next one, time and id of the last
   * event of the page before.
   */
  public List<StoredEvent> page(long fromMillis, long beforeMillis, long beforeId, int size) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT event.id, at, room.name, kind, text"
                      + " FROM event LEFT JOIN room ON room.id = event.room"
                      + " WHERE at >= ? AND (at, event.id) < (?, ?)"
                      + " ORDER BY at DESC, event.id DESC LIMIT ?")) {
            select.setLong(1, fromMillis);
            select.setLong(2, beforeMillis);
            select.setLong(3, beforeId);
            select.setInt(4, size);
            return events(select);
          }
        });
  }

  /** Returns a page of the events of one kind, in the order and with the marks of {@link #page}. */
  public List<StoredEvent> ofKind(
      String kind, long fromMillis, long beforeMillis, long beforeId, int size) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT event.id, at, room.name, kind, text"
                      + " FROM event LEFT JOIN room ON room.id = event.room"
                      + " WHERE kind = ? AND at >= ? AND (at, event.id) < (?, ?)"
                      + " ORDER BY at DESC, event.id DESC LIMIT ?")) {
            select.setString(1, kind);
            select.setLong(2, fromMillis);
            select.setLong(3, beforeMillis);
            select.setLong(4, beforeId);
            select.setInt(5, size);
            return events(select);
          }
        });
  }

  /**
   * Hands over, oldest first, what was switched in a room from {@code fromMillis} up to {@code
   * toMillis}, and before that the last few switchings that tell how things stood.
   */
  public void switchings(String room, long fromMillis, long toMillis, Consumer<StoredEvent> visit) {
    List<StoredEvent> before =
        database.read(
            connection -> {
              try (PreparedStatement select =
                  connection.prepareStatement(
                      OF_ROOM + " AND at < ? ORDER BY at DESC, event.id DESC LIMIT ?")) {
                select.setString(1, room);
                select.setLong(2, fromMillis);
                select.setInt(3, LOOK_BACK);
                return events(select);
              }
            });
    for (int i = before.size() - 1; i >= 0; i--) {
      visit.accept(before.get(i));
    }
    int unused =
        database.read(
            connection -> {
              try (PreparedStatement select =
                  connection.prepareStatement(
                      OF_ROOM + " AND at >= ? AND at < ? ORDER BY at, event.id")) {
                select.setString(1, room);
                select.setLong(2, fromMillis);
                select.setLong(3, toMillis);
                return forEach(select, visit);
              }
            });
  }

  /** Returns the id of the newest event that is flushed; 0 for none. Ids rise with each flush. */
  public long newestId() {
    return database.read(
        connection -> {
          try (PreparedStatement select = connection.prepareStatement("SELECT max(id) FROM event");
              ResultSet row = select.executeQuery()) {
            return row.next() ? row.getLong(1) : 0;
          }
        });
  }

  /**
   * Returns how often an output was switched on from {@code fromMillis} on, among the events after
   * {@code afterId} and up to {@code toId}.
   */
  public int closings(String room, String output, long fromMillis, long afterId, long toId) {
    return database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(
                  "SELECT count(*) FROM event JOIN room ON room.id = event.room"
                      + " WHERE event.id > ? AND event.id <= ? AND at >= ?"
                      + " AND room.name = ? AND kind = 'on' AND substr(text, 1, ?) = ?")) {
            String begins = output + ":";
            select.setLong(1, afterId);
            select.setLong(2, toId);
            select.setLong(3, fromMillis);
            select.setString(4, room);
            select.setInt(5, begins.length());
            select.setString(6, begins);
            try (ResultSet row = select.executeQuery()) {
              return row.next() ? row.getInt(1) : 0;
            }
          }
        });
  }

  /** Appends events in the caller's transaction. */
  static void append(Connection connection, List<StoredEvent> events) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO event (at, room, kind, text) VALUES (?, ?, ?, ?)")) {
      for (StoredEvent event : events) {
        insert.setLong(1, event.atMillis());
        if (event.room() == null) {
          insert.setNull(2, Types.INTEGER);
        } else {
          insert.setLong(2, Rooms.idOf(connection, event.room()));
        }
        insert.setString(3, event.kind());
        insert.setString(4, event.text());
        insert.executeUpdate();
      }
    }
  }

  private static List<StoredEvent> events(PreparedStatement select) throws SQLException {
    List<StoredEvent> page = new ArrayList<>();
    int unused = forEach(select, page::add);
    return page;
  }

  private static int forEach(PreparedStatement select, Consumer<StoredEvent> visit)
      throws SQLException {
    int count = 0;
    try (ResultSet rows = select.executeQuery()) {
      while (rows.next()) {
        visit.accept(
            new StoredEvent(
                rows.getLong(1),
                rows.getLong(2),
                rows.getString(3),
                rows.getString(4),
                rows.getString(5)));
        count++;
      }
    }
    return count;
  }
}
