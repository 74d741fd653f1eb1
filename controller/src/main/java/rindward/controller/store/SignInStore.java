package rindward.controller.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;

/**
 * Keeps who may sign in, their sessions and tokens, and the record of changes. On the disk when a
 * method returns. For any thread.
 */
public final class SignInStore {
  private final Database database;

  public SignInStore(Database database) {
    this.database = database;
  }

  /** Returns everybody, by name. */
  public List<StoredPerson> people() {
    return rows(
        "SELECT name, role, password_hash FROM person ORDER BY name",
        row -> new StoredPerson(row.getString(1), row.getString(2), row.getString(3)));
  }

  /** Adds a person, or changes the one of that name; their tokens stay. */
  public void keep(StoredPerson person) {
    change(
        "INSERT INTO person (name, role, password_hash) VALUES (?, ?, ?)"
            + " ON CONFLICT (name) DO UPDATE"
            + " SET role = excluded.role, password_hash = excluded.password_hash",
        person.name(),
        person.role(),
        person.passwordHash());
  }

  /** Forgets a person and their tokens. */
  public void forget(String name) {
    change("DELETE FROM person WHERE name = ?", name);
  }

  public List<StoredToken> tokens() {
    return rows(
        "SELECT hash, id, person, role, session, label, created, expires FROM token",
        row ->
            new StoredToken(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getBoolean(5),
                row.getString(6),
                row.getLong(7),
                row.getLong(8)));
  }

  public void keep(StoredToken token) {
    change(
        "INSERT INTO token (hash, id, person, role, session, label, created, expires)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        token.hash(),
        token.id(),
        token.person(),
        token.role(),
        token.isSession(),
        token.label(),
        token.createdMillis(),
        token.expiresMillis());
  }

  /** Forgets a token; one that is not there does no harm. */
  public void forgetToken(String hash) {
    change("DELETE FROM token WHERE hash = ?", hash);
  }

  /** Adds to the record of changes. */
  public void note(StoredChange change) {
    change(
        "INSERT INTO audit (at, who, what) VALUES (?, ?, ?)",
        change.atMillis(),
        change.who(),
        change.what());
  }

  /** Returns a page of the record, newest first, of entries before {@code beforeId}. */
  public List<StoredChange> changes(long beforeId, int size) {
    return rows(
        "SELECT id, at, who, what FROM audit WHERE id < ? ORDER BY id DESC LIMIT ?",
        row -> new StoredChange(row.getLong(1), row.getLong(2), row.getString(3), row.getString(4)),
        beforeId,
        size);
  }

  private interface Reader<T> {
    T read(ResultSet row) throws SQLException;
  }

  private <T> List<T> rows(String query, Reader<T> reader, Object... values) {
    return database.read(
        connection -> {
          List<T> read = new ArrayList<>();
          try (PreparedStatement select = prepared(connection, query, values);
              ResultSet rows = select.executeQuery()) {
            while (rows.next()) {
              read.add(reader.read(rows));
            }
          }
          return read;
        });
  }

  private void change(String statement, Object... values) {
    int unused =
        database.write(
            connection -> {
              try (PreparedStatement sql = prepared(connection, statement, values)) {
                return sql.executeUpdate();
              }
            });
  }

  private static PreparedStatement prepared(Connection connection, String text, Object... values)
      throws SQLException {
    PreparedStatement sql = connection.prepareStatement(text);
    for (int i = 0; i < values.length; i++) {
      sql.setObject(i + 1, values[i]);
    }
    return sql;
  }
}
