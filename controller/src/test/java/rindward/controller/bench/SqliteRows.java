package rindward.controller.bench;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Account;
import rindward.hardware.Thousandths;

/** One row a sample in SQLite, without rowid, and a window query. */
final class SqliteRows implements Contender {
  private @Nullable Connection connection;

  @Override
  public String title() {
    return "SQLite rows, window query";
  }

  @Override
  public Path file(Path folder) {
    return folder.resolve("rows.sqlite");
  }

  @Override
  public void fill(Path folder) throws SQLException {
    try (Connection filled = DriverManager.getConnection("jdbc:sqlite:" + file(folder));
        Statement statement = filled.createStatement()) {
      statement.execute(
          "CREATE TABLE sample (room INTEGER, at INTEGER, temperature INTEGER, humidity INTEGER,"
              + " PRIMARY KEY (room, at)) WITHOUT ROWID");
      statement.execute("BEGIN");
      try (PreparedStatement insert =
          filled.prepareStatement("INSERT INTO sample VALUES (1, ?, ?, ?)")) {
        Season.<SQLException>forEach(
            (second, temperature, humidity) -> {
              insert.setLong(1, second);
              insert.setInt(2, temperature);
              insert.setObject(3, humidity == Thousandths.NONE ? null : humidity);
              insert.executeUpdate();
            });
      }
      statement.execute("COMMIT");
    }
  }

  @Override
  public void open(Path folder) throws SQLException {
    connection = DriverManager.getConnection("jdbc:sqlite:" + file(folder));
  }

  @Override
  public Account ask() throws SQLException {
    return new WindowQuery("min").ask(connection);
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
