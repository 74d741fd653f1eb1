package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What happened besides switching, to look up later. Written by {@code SampleLog} with the samples
 * of the same time; readable once flushed. For any thread.
 */
public final class EventLog {
  private final Database database;

  public EventLog(Database database) {
    this.database = database;
  }

  /** Returns the newest event of all; nothing when there is none. */
  public Optional<StoredEvent> newest() {
    return database
        .read(connection -> events(connection, "", 0, Long.MAX_VALUE, Long.MAX_VALUE, 1))
        .stream()
        .findFirst();
  }

  /**
   * Returns a page of events of one kind at or after {@code fromMillis}, newest first. For the
   * first page, give the end of the time asked for (not included) and 0; for the next one, time and
   * id of the last event of the page before.
   */
  public List<StoredEvent> page(
      String kind, long fromMillis, long beforeMillis, long beforeId, int size) {
    return database.read(
        connection -> events(connection, kind, fromMillis, beforeMillis, beforeId, size));
  }

  /** Appends events in the caller's transaction. */
  public static void append(Connection connection, List<StoredEvent> events) throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO event (at, room, kind, text) VALUES (?, ?, ?, ?)")) {
      for (StoredEvent event : events) {
        insert.setLong(1, event.atMillis());
        if (event.room() == null) {
          insert.setNull(2, Types.INTEGER);
        } else {
          insert.setLong(2, RoomIds.idOf(connection, event.room()));
        }
        insert.setString(3, event.kind());
        insert.setString(4, event.text());
        insert.executeUpdate();
      }
    }
  }

  /** An empty kind is every kind. */
  private static List<StoredEvent> events(
      Connection connection,
      String kind,
      long fromMillis,
      long beforeMillis,
      long beforeId,
      int size)
      throws SQLException {
    try (PreparedStatement select =
        connection.prepareStatement(
            "SELECT event.id, at, room.name, kind, text"
                + " FROM event LEFT JOIN room ON room.id = event.room"
                + " WHERE ? IN ('', kind) AND at >= ? AND (at, event.id) < (?, ?)"
                + " ORDER BY at DESC, event.id DESC LIMIT ?")) {
      select.setString(1, kind);
      select.setLong(2, fromMillis);
      select.setLong(3, beforeMillis);
      select.setLong(4, beforeId);
      select.setInt(5, size);
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
}
