package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;

/**
 * What happened besides switching, to look up later. Written by {@link SampleLog} with the samples
 * of the same time; readable once flushed. For any thread.
 */
public final class EventLog {
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
    try (ResultSet rows = select.executeQuery()) {
      while (rows.next()) {
        page.add(
            new StoredEvent(
                rows.getLong(1),
                rows.getLong(2),
                rows.getString(3),
                rows.getString(4),
                rows.getString(5)));
      }
    }
    return page;
  }
}
