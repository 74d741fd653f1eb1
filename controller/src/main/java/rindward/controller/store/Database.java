package rindward.controller.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteConfig.SynchronousMode;
import rindward.controller.settings.OwnFile;

/**
 * One SQLite file, made when it is not there. Every commit reaches the disk before it returns, so
 * that pulling the plug loses nothing committed.
 *
 * <p>SQLite's own {@code synchronous=FULL} would see to that with an fsync, which has the file
 * system write down the log's new time as well: on a memory card more than the samples themselves.
 * So SQLite only keeps the order that a sound file needs ({@code NORMAL}), and the log's data are
 * forced out here, after each commit. Where a file system allows no log, it is FULL.
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
  private final boolean mayMake;
  private @Nullable Connection writer;
  private volatile boolean checked;

  /** Names the file; nothing is touched before {@link #open()} or the first use. */
  public Database(Path file) {
    this(file, PATIENCE);
  }

  /** As above, waiting {@code patience} for another process's lock. */
  Database(Path file, Duration patience) {
    this(file, patience, true);
  }

  private Database(Path file, Duration patience, boolean mayMake) {
    this.file = file.toAbsolutePath().normalize();
    this.patience = patience;
    this.mayMake = mayMake;
  }

  /**
   * Names a file that another process makes, and brings up to date when it starts; until then it
   * cannot be used.
   */
  public static Database ofAnother(Path file) {
    return new Database(file, PATIENCE, false);
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
  public interface Work<T> {
    T on(Connection connection) throws SQLException;
  }

  /** Does {@code work} in one transaction: all of it is on the disk on return, or none. */
  public synchronized <T> T write(Work<T> work) {
    try (Statement sql = writer().createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      try {
        T result = work.on(sql.getConnection());
        sql.execute("COMMIT");
        forceLog();
        return result;
      } catch (SQLException | RuntimeException e) {
        rollBack(sql, e);
        throw e;
      }
    } catch (SQLException e) {
      StoreException failure = StoreException.of(file, e);
      if (failure.trouble() != StoreTrouble.LOCKED && failure.trouble() != StoreTrouble.FULL) {
        closeWriter();
      }
      throw failure;
    } catch (IOException e) {
      closeWriter();
      throw StoreException.of(file, StoreTrouble.DISK_FAILING, e);
    }
  }

  /** Returns when the disk has what the log holds; what is no longer in the log, it has already. */
  private void forceLog() throws IOException {
    try (FileChannel log = FileChannel.open(StoreFiles.log(file), StandardOpenOption.WRITE)) {
      log.force(false);
    } catch (NoSuchFileException noLog) {
      // Not every file system can have one.
    }
  }

  /** Does {@code work} on a connection of its own that sees one state of the file throughout. */
  public <T> T read(Work<T> work) {
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
   * without gaps, while others go on reading and writing. Its schema stays as it is: a program that
   * is older than this one may have the file open, and a copy is the only way back to it.
   */
  public void copyTo(Path copy) {
    if (!Files.exists(file)) {
      open();
    }
    NativeLibrary.load(file);
    try (Connection connection = connect(true);
        PreparedStatement sql = connection.prepareStatement("VACUUM INTO ?")) {
      ours(copy);
      sql.setString(1, copy.toString());
      sql.execute();
    } catch (SQLException e) {
      throw StoreException.of(file, e);
    }
  }

  private static void ours(Path file) {
    try {
      OwnFile.makeShared(file);
    } catch (IOException e) {
      // SQLite is about to say what ails the disk, and says it better.
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
        if (mayMake) {
          ours(file);
        } else if (!Files.exists(file)) {
          throw new StoreException(file, StoreTrouble.NOT_MADE_YET, "");
        }
        opened = connect(false);
        if (mayMake) {
          Schema.bringUpToDate(opened, file);
        } else {
          Schema.mustBeUpToDate(opened, file);
        }
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
      throw new StoreException(file, StoreTrouble.MISSING_FOLDER, "");
    }
    if (Files.isDirectory(file)) {
      throw new StoreException(file, StoreTrouble.NOT_A_FILE, "");
    }
    if (!Files.isWritable(folder) || (Files.exists(file) && !Files.isWritable(file))) {
      throw new StoreException(file, StoreTrouble.READ_ONLY, "");
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
        if (isLogged(sql)) {
          sql.execute("PRAGMA synchronous = NORMAL");
        }
      } catch (SQLException e) {
        close(connection);
        throw e;
      }
    }
    return connection;
  }

  private static boolean isLogged(Statement sql) throws SQLException {
    try (ResultSet mode = sql.executeQuery("PRAGMA journal_mode = WAL")) {
      return mode.next() && "wal".equals(mode.getString(1));
    }
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
