package rindward.controller.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;

/**
 * One SQLite file, made when it is not there. Every commit reaches the disk before it returns
 * (write-ahead log, {@code synchronous=FULL}), so that pulling the plug loses nothing committed.
 *
 * <p>There is one connection that writes, used by one thread at a time: the thread that flushes the
 * samples, or that of the request that makes an entry; the other waits. Each read has a connection
 * of its own, sees one state of the file throughout, and waits for nobody. A second process may
 * read and write the same file. After a failure the next use opens the file afresh, so a disk that
 * comes back is used again without a restart.
 */
public final class Database implements AutoCloseable {
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  /**
   * Of a new file. A flush touches three pages, and a memory card wears by what is written: with
   * pages of 4096 bytes two rooms cost 30 MB a day, with these 17.
   */
  private static final int PAGE_BYTES = 1024;

  private final Path file;
  private final Duration patience;
  private @Nullable Connection writer;
  private volatile boolean checked;

  /** Names the file; nothing is touched before {@link #open()} or the first use. */
  public Database(Path file) {
    this(file, PATIENCE);
  }

  /** As above, waiting {@code patience} for another process's lock. */
  Database(Path file, Duration patience) {
    this.file = file.toAbsolutePath().normalize();
    this.patience = patience;
  }

  /**
   * Opens the file or makes it, and brings its schema up to date. Not needed before use; it tells
   * early what is wrong.
   *
   * @throws StoreException in one sentence, when the file cannot be used
   */
  public synchronized void open() {
    writer();
  }

  /** Returns the file's absolute path. */
  public Path file() {
    return file;
  }

  /** A piece of work on a connection. */
  @FunctionalInterface
  interface Work<T> {
    T on(Connection connection) throws SQLException;
  }

  /** Does {@code work} in one transaction: all of it is on the disk on return, or none. */
  synchronized <T> T write(Work<T> work) {
    try (Statement sql = writer().createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      try {
        T result = work.on(sql.getConnection());
        sql.execute("COMMIT");
        return result;
      } catch (SQLException | RuntimeException e) {
        rollBack(sql, e);
        throw e;
      }
    } catch (SQLException e) {
      StoreException failure = StoreException.of(file, e);
      if (failure.trouble() != Trouble.LOCKED && failure.trouble() != Trouble.FULL) {
        closeWriter();
      }
      throw failure;
    }
  }

  /** Does {@code work} on a connection of its own that sees one state of the file throughout. */
  <T> T read(Work<T> work) {
    if (!checked) {
      open();
    }
    try (Connection connection = connect(true);
        Statement sql = connection.createStatement()) {
      sql.execute("BEGIN");
      return work.on(connection);
    } catch (SQLException e) {
      throw StoreException.of(file, e);
    }
  }

  /**
   * Writes what the file holds at this moment into a new file {@code copy}, without its log and
   * without gaps, while others go on reading and writing.
   */
  void copyTo(Path copy) {
    if (!checked) {
      open();
    }
    try (Connection connection = connect(true);
        PreparedStatement sql = connection.prepareStatement("VACUUM INTO ?")) {
      sql.setString(1, copy.toString());
      sql.execute();
    } catch (SQLException e) {
      throw StoreException.of(file, e);
    }
  }

  /** Closes the file; a later use opens it again. */
  @Override
  public synchronized void close() {
    closeWriter();
  }

  static void rollBack(Statement sql, Exception why) {
    try {
      if (!((org.sqlite.SQLiteConnection) sql.getConnection()).getDatabase().isClosed()) {
        sql.execute("ROLLBACK");
      }
    } catch (SQLException alreadyRolledBack) {
      why.addSuppressed(alreadyRolledBack);
    }
  }

  private Connection writer() {
    if (writer == null) {
      checked = false;
      checkPath();
      NativeLibrary.load(file);
      Connection opened = null;
      try {
        opened = connect(false);
        Schema.bringUpToDate(opened, file);
        writer = opened;
        checked = true;
      } catch (SQLException e) {
        throw StoreException.of(file, e);
      } finally {
        if (writer == null) {
          close(opened);
        }
      }
    }
    return writer;
  }

  /** Tells apart what SQLite reports as one. */
  private void checkPath() {
    Path folder = file.getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new StoreException(file, Trouble.MISSING_FOLDER, "");
    }
    if (Files.isDirectory(file)) {
      throw new StoreException(file, Trouble.NOT_A_FILE, "");
    }
    if (!Files.isWritable(folder) || (Files.exists(file) && !Files.isWritable(file))) {
      throw new StoreException(file, Trouble.READ_ONLY, "");
    }
  }

  private Connection connect(boolean readOnly) throws SQLException {
    SQLiteConfig config = new SQLiteConfig();
    config.setReadOnly(readOnly);
    config.setBusyTimeout(Math.toIntExact(patience.toMillis()));
    config.enforceForeignKeys(true);
    config.setSynchronous(SynchronousMode.FULL);
    Connection connection = config.createConnection("jdbc:sqlite:" + file);
    if (!readOnly) {
      try (Statement sql = connection.createStatement()) {
        sql.execute("PRAGMA page_size = " + PAGE_BYTES); // Only before the log mode is it heard.
        sql.execute("PRAGMA journal_mode = WAL");
      } catch (SQLException e) {
        close(connection);
        throw e;
      }
    }
    return connection;
  }

  private void closeWriter() {
    close(writer);
    writer = null;
    checked = false;
  }

  private void close(@Nullable Connection connection) {
    if (connection != null) {
      try {
        connection.close();
      } catch (SQLException e) {
        // Everything committed is on the disk already; there is nothing left to save or to say.
      }
    }
  }
}
