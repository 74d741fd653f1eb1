package rindward.controller.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import org.jspecify.annotations.Nullable;
import rindward.controller.ledger.Account;
import rindward.hardware.Thousandths;

/** One row a sample in DuckDB, a column store made for such questions, and a window query. */
final class DuckDbRows implements Contender {
  private @Nullable Connection connection;

  @Override
  public String title() {
    return "DuckDB rows, window query";
  }

  @Override
  public Path file(Path folder) {
    return folder.resolve("rows.duckdb");
  }

  @Override
  public void fill(Path folder) throws IOException, SQLException {
    Path csv = folder.resolve("season.csv");
    try (BufferedWriter out = Files.newBufferedWriter(csv)) {
      Season.<IOException>forEach(
          (second, temperature, humidity) ->
              out.write(
                  "1,%d,%d,%s\n"
                      .formatted(
                          second,
                          temperature,
                          humidity == Thousandths.NONE ? "" : String.valueOf(humidity))));
    }
    try (Connection filled = DriverManager.getConnection("jdbc:duckdb:" + file(folder));
        Statement statement = filled.createStatement()) {
      statement.execute(
          "CREATE TABLE sample (room INTEGER, \"at\" BIGINT, temperature INTEGER, humidity"
              + " INTEGER)");
      statement.execute("COPY sample FROM '" + csv + "' (HEADER false)");
      statement.execute("CHECKPOINT");
    }
    Files.delete(csv);
  }

  @Override
  public void open(Path folder) throws SQLException {
    connection = DriverManager.getConnection("jdbc:duckdb:" + file(folder));
  }

  @Override
  public Account ask() throws SQLException {
    return new WindowQuery("least").ask(connection);
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
