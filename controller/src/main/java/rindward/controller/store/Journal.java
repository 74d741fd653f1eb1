package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * What people said, in the order it was said; only ever appended to. For any thread, and for
 * several processes at once.
 */
public final class Journal {
  private static final String COLUMNS = "SELECT id, request, subject, at, by, body FROM entry ";

  private static final String NEWEST = "WHERE subject = ? ORDER BY id DESC LIMIT 1";

  private final Database database;

  public Journal(Database database) {
    this.database = database;
  }

  /**
   * Appends one entry; it is on the disk when this returns. A request that was kept before is not
   * kept again, and answered as it was the first time.
   *
   * @param expectedLastId the subject's newest entry as the sender saw it, 0 for none; empty to
   *     append whatever has happened since
   * @throws StoreException when it could not be kept; the same request may be sent again
   */
  public AppendResult append(
      String request,
      String subject,
      OptionalLong expectedLastId,
      long atMillis,
      String by,
      String body) {
    return database.write(
        connection -> {
          StoredEntry before = find(connection, "WHERE request = ?", request);
          if (before != null) {
            return new AppendResult.Appended(before, true);
          }
          if (expectedLastId.isPresent()) {
            StoredEntry last = find(connection, NEWEST, subject);
            if (expectedLastId.getAsLong() != (last == null ? 0 : last.id())) {
              return new AppendResult.Conflict(last);
            }
          }
          long id = insert(connection, request, subject, atMillis, by, body);
          return new AppendResult.Appended(
              new StoredEntry(id, request, subject, atMillis, by, body), false);
        });
  }

  /**
   * One of several entries that are kept together.
   *
   * @param subject what it is about
   * @param body the entry as it is written down
   */
  public record Unwritten(String subject, String body) {}

  /**
   * Appends several entries in one transaction: after a power cut there are all or none. A request
   * that was kept before is not kept again.
   *
   * @param request stands for all of them; entry {@code i} is kept as {@code request/i}
   * @param seen the newest entry of each subject as the sender saw it, 0 for none; a subject that
   *     is missing is appended to whatever has happened since
   * @return a subject that somebody else has spoken of since, and then nothing was kept; empty if
   *     all were
   * @throws StoreException when they could not be kept; the same request may be sent again
   */
  public Optional<String> appendAll(
      String request, List<Unwritten> entries, Map<String, Long> seen, long atMillis, String by) {
    return database.write(
        connection -> {
          if (find(connection, "WHERE request = ?", request + "/0") != null) {
            return Optional.empty();
          }
          for (Unwritten entry : entries) {
            Long expected = seen.get(entry.subject());
            if (expected != null && expected != newest(connection, entry.subject())) {
              return Optional.of(entry.subject());
            }
          }
          int kept = 0;
          for (Unwritten entry : entries) {
            insert(connection, request + "/" + kept, entry.subject(), atMillis, by, entry.body());
            kept++;
          }
          return Optional.empty();
        });
  }

  private static long newest(Connection connection, String subject) throws SQLException {
    StoredEntry last = find(connection, NEWEST, subject);
    return last == null ? 0 : last.id();
  }

  /** Returns what a request left in the journal, if it was kept. */
  public Optional<StoredEntry> find(String request) {
    return database.read(
        connection -> Optional.ofNullable(find(connection, "WHERE request = ?", request)));
  }

  /**
   * Hands over every entry after {@code id} in order, those of other processes too; 0 for all. They
   * are not gathered first, for a journal of ten years would not fit.
   */
  public void since(long id, Consumer<StoredEntry> visit) {
    database.read(
        connection -> {
          try (PreparedStatement select =
              connection.prepareStatement(COLUMNS + "WHERE id > ? ORDER BY id")) {
            select.setLong(1, id);
            try (ResultSet rows = select.executeQuery()) {
              int count = 0;
              while (rows.next()) {
                visit.accept(entry(rows));
                count++;
              }
              return count;
            }
          }
        });
  }

  /** Returns every entry of one subject in order; a few, for they are gathered. */
  public List<StoredEntry> about(String subject) {
    return database.read(
        connection -> {
          List<StoredEntry> found = new ArrayList<>();
          try (PreparedStatement select =
              connection.prepareStatement(COLUMNS + "WHERE subject = ? ORDER BY id")) {
            select.setString(1, subject);
            try (ResultSet rows = select.executeQuery()) {
              while (rows.next()) {
                found.add(entry(rows));
              }
            }
          }
          return found;
        });
  }

  /** Returns the number of the last entry, of other processes too; 0 for none. */
  public long last() {
    return database.read(
        connection -> {
          try (PreparedStatement select =
                  connection.prepareStatement("SELECT coalesce(max(id), 0) FROM entry");
              ResultSet row = select.executeQuery()) {
            return row.next() ? row.getLong(1) : 0L;
          }
        });
  }

  /** Returns which subjects were spoken of after {@code id}. */
  public List<String> subjectsSince(long id) {
    return database.read(
        connection -> {
          List<String> subjects = new ArrayList<>();
          try (PreparedStatement select =
              connection.prepareStatement("SELECT DISTINCT subject FROM entry WHERE id > ?")) {
            select.setLong(1, id);
            try (ResultSet rows = select.executeQuery()) {
              while (rows.next()) {
                subjects.add(rows.getString(1));
              }
            }
          }
          return subjects;
        });
  }

  private static long insert(
      Connection connection, String request, String subject, long atMillis, String by, String body)
      throws SQLException {
    try (PreparedStatement insert =
        connection.prepareStatement(
            "INSERT INTO entry (request, subject, at, by, body) VALUES (?, ?, ?, ?, ?)"
                + " RETURNING id")) {
      insert.setString(1, request);
      insert.setString(2, subject);
      insert.setLong(3, atMillis);
      insert.setString(4, by);
      insert.setString(5, body);
      try (ResultSet row = insert.executeQuery()) {
        row.next();
        return row.getLong(1);
      }
    }
  }

  private static @Nullable StoredEntry find(Connection connection, String where, String value)
      throws SQLException {
    try (PreparedStatement select = connection.prepareStatement(COLUMNS + where)) {
      select.setString(1, value);
      try (ResultSet row = select.executeQuery()) {
        return row.next() ? entry(row) : null;
      }
    }
  }

  private static StoredEntry entry(ResultSet row) throws SQLException {
    return new StoredEntry(
        row.getLong(1),
        row.getString(2),
        row.getString(3),
        row.getLong(4),
        row.getString(5),
        row.getString(6));
  }
}
