package rindward.controller.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import org.sqlite.SQLiteConfig;

/** Whether a database is whole, as far as SQLite can tell by reading all of it. */
public final class Soundness {
  private Soundness() {}

  /** Returns what is wrong with a closed file, in a few words; empty when it is whole and ours. */
  public static Optional<String> flaw(Path file) {
    if (!Files.isRegularFile(file)) {
      return Optional.of("there is no such file");
    }
    NativeLibrary.load(file);
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(true);
    try (Connection connection = config.createConnection("jdbc:sqlite:" + file)) {
      return Schema.isOurs(connection, file) ? flaw(connection) : Optional.of("it is empty");
    } catch (SQLException e) {
      return Optional.of(StoreException.of(file, e).trouble().sentence());
    } catch (StoreException e) {
      return Optional.of(e.trouble().sentence());
    }
  }

  /** Returns what is wrong with an open one, all of it read and its indexes compared. */
  public static Optional<String> flaw(Connection connection) throws SQLException {
    return flaw(connection, "PRAGMA integrity_check(1)");
  }

  /** Returns what is wrong with an open one; the contents of indexes are not compared. */
  public static Optional<String> quickFlaw(Connection connection) throws SQLException {
    return flaw(connection, "PRAGMA quick_check(1)");
  }

  private static Optional<String> flaw(Connection connection, String check) throws SQLException {
    try (Statement sql = connection.createStatement();
        ResultSet row = sql.executeQuery(check)) {
      String said = row.next() ? row.getString(1) : "no answer";
      return said.equals("ok") ? Optional.empty() : Optional.of(said.replaceAll("\\s+", " "));
    }
  }
}
