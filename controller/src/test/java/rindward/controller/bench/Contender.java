package rindward.controller.bench;

import java.nio.file.Path;
import rindward.controller.ledger.Account;

/** One way to keep a season and to answer what a lot has lived through. */
interface Contender extends AutoCloseable {
  /** Returns what the table calls it. */
  String title();

  /** Returns its file in {@code folder}. */
  Path file(Path folder);

  /** Makes the file with the whole season in it and closes it. */
  void fill(Path folder) throws Exception;

  /** Opens the file and loads whatever library it takes. */
  void open(Path folder) throws Exception;

  /** Returns the full account of the season, from the file. */
  Account ask() throws Exception;

  @Override
  void close() throws Exception;

  /** Returns the contender of that name. */
  static Contender named(String name) {
    return switch (name) {
      case "chunks" -> new DayChunks();
      case "sqlite" -> new SqliteRows();
      case "duckdb" -> new DuckDbRows();
      default -> throw new IllegalArgumentException("no contender is called '" + name + "'");
    };
  }
}
