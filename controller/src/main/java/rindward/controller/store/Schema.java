package rindward.controller.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Brings a database up to the newest schema: numbered SQL files beside this class, of which {@code
 * PRAGMA user_version} says how many a file has been through.
 */
public final class Schema {
  /** 'RIND', set by the first file. */
  private static final int APPLICATION_ID = 0x52494E44;

  private Schema() {}

  /**
   * Applies the files that {@code file} has not been through, all or none.
   *
   * @throws StoreException when the database is of a newer program, or of another one
   */
  static void bringUpToDate(Connection connection, Path file) throws SQLException {
    int newest = newest();
    if (checkedVersion(connection, file, newest) == newest) {
      return;
    }
    try (Statement sql = connection.createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      try {
        // Another process may have done it while this one waited for the lock.
        for (int next = checkedVersion(connection, file, newest) + 1; next <= newest; next++) {
          sql.executeUpdate(script(next));
          sql.execute("PRAGMA user_version = " + next);
        }
        sql.execute("COMMIT");
      } catch (SQLException | RuntimeException e) {
        Database.rollBack(sql, e);
        throw e;
      }
    }
  }

  /**
   * Refuses a database that is not of this program's schema.
   *
   * @throws StoreException when the database is of an older or newer program, or of another one
   */
  static void mustBeUpToDate(Connection connection, Path file) throws SQLException {
    int newest = newest();
    int version = checkedVersion(connection, file, newest);
    if (version != newest) {
      throw new StoreException(
          file, StoreTrouble.NOT_MADE_YET, "schema " + version + ", this program needs " + newest);
    }
  }

  /**
   * Tells whether a database is one of ours, of a schema that this program knows; an empty one is
   * not.
   *
   * @throws StoreException when the database is of a newer program, or of another one
   */
  static boolean isOurs(Connection connection, Path file) throws SQLException {
    return checkedVersion(connection, file, newest()) > 0;
  }

  /** Returns the number of the newest schema that this program knows. */
  public static int newest() {
    int number = 0;
    while (script(number + 1) != null) {
      number++;
    }
    return number;
  }

  private static int checkedVersion(Connection connection, Path file, int newest)
      throws SQLException {
    int version = integer(connection, "PRAGMA user_version");
    if (integer(connection, "PRAGMA application_id") != APPLICATION_ID
        && (version != 0 || integer(connection, "SELECT count(*) FROM sqlite_schema") != 0)) {
      throw new StoreException(file, StoreTrouble.FOREIGN, "");
    }
    if (version > newest) {
      throw new StoreException(
          file, StoreTrouble.NEWER_SCHEMA, "schema " + version + ", this program knows " + newest);
    }
    return version;
  }

  private static @Nullable String script(int number) {
    String name = String.format(Locale.ROOT, "schema-%03d.sql", number);
    try (InputStream in = Schema.class.getResourceAsStream(name)) {
      return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static int integer(Connection connection, String query) throws SQLException {
    try (Statement sql = connection.createStatement();
        ResultSet row = sql.executeQuery(query)) {
      return row.next() ? row.getInt(1) : 0;
    }
  }
}
