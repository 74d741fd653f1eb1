package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.assertj.core.api.AbstractThrowableAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Each way a database can be unusable gets its own sentence with cause and remedy. */
class DatabaseTest {
  @RegisterExtension final OwnDatabase own = new OwnDatabase();

  @Test
  void open_noFile_makesOneOnTheNewestSchema() throws SQLException {
    own.database().open();

    assertThat(ask("PRAGMA user_version")).isEqualTo(Schema.newest());
    assertThat(ask("SELECT count(*) FROM sqlite_schema WHERE type = 'table'")).isEqualTo(13);
  }

  @Test
  void open_emptyFile_isBroughtUpToDate() throws IOException, SQLException {
    Files.createFile(own.file());
    own.database().open();
    assertThat(ask("PRAGMA user_version")).isEqualTo(Schema.newest());
  }

  @Test
  void copyTo_olderSchema_isCopiedAsItIs_andNeitherIsChanged() throws Exception {
    own.database().open();
    own.database().close();
    tell("PRAGMA user_version = " + (Schema.newest() - 1));
    Path copy = own.folder().resolve("copy.db");

    try (Database beside = new Database(own.file())) {
      beside.copyTo(copy);
    }

    assertThat(ask("PRAGMA user_version")).isEqualTo(Schema.newest() - 1);
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + copy);
        Statement sql = connection.createStatement();
        ResultSet version = sql.executeQuery("PRAGMA user_version")) {
      assertThat(version.getInt(1)).isEqualTo(Schema.newest() - 1);
    }
  }

  @Test
  void logKeepsItsOrder_andReferencesAreHeld() {
    Database database = own.database();
    // 1 is NORMAL: the log's data are forced out after each commit besides.
    assertThat(database.<String>write(c -> pragma(c, "synchronous"))).isEqualTo("1");
    assertThat(database.<String>write(c -> pragma(c, "journal_mode"))).isEqualTo("wal");
    assertThat(database.<String>write(c -> pragma(c, "foreign_keys"))).isEqualTo("1");
  }

  @Test
  void theUnpackedLibraryDoesNotStayBehind() throws IOException {
    own.database().open();
    try (Stream<Path> files = Files.list(own.folder())) {
      assertThat(files.map(p -> p.getFileName().toString()))
          .containsExactlyInAnyOrder("shed.sqlite", "shed.sqlite-wal", "shed.sqlite-shm");
    }
  }

  @Test
  void open_newerSchema_saysSoAndChangesNothing() throws SQLException {
    own.database().open();
    tell("PRAGMA user_version = 99");
    assertThatTrouble(own.database()::open, StoreTrouble.NEWER_SCHEMA)
        .hasMessageStartingWith("cannot use the database " + own.file() + ": it was written by a")
        .hasMessageEndingWith("(schema 99, this program knows " + Schema.newest() + ")");
  }

  @Test
  void open_databaseOfAnotherProgram_isLeftAlone() throws SQLException {
    tell("CREATE TABLE theirs (a)");
    assertThatTrouble(own.database()::open, StoreTrouble.FOREIGN)
        .hasMessageContaining("it is the database of another program; correct the path");
    assertThat(ask("SELECT count(*) FROM sqlite_schema")).isEqualTo(1);
  }

  @Test
  void open_missingFolder_namesTheRemedy() {
    Path file = own.folder().resolve("not-there/shed.sqlite");
    assertThatTrouble(own.database(file)::open, StoreTrouble.MISSING_FOLDER)
        .hasMessage(
            "cannot use the database "
                + file
                + ": its folder does not exist; create the folder or correct the path");
  }

  @Test
  void open_folderInPlaceOfTheFile_saysSo() {
    assertThatTrouble(own.database(own.folder())::open, StoreTrouble.NOT_A_FILE);
  }

  @Test
  void write_lockedByAnother_saysSoAndWorksOnceReleased() throws SQLException {
    Database database = own.database();
    database.open();
    try (Connection other = connect();
        Statement sql = other.createStatement()) {
      sql.execute("BEGIN IMMEDIATE");
      assertThatTrouble(() -> database.write(c -> 1), StoreTrouble.LOCKED)
          .hasMessageContaining("another program keeps it locked; close that program");
      sql.execute("COMMIT");
    }
    assertThat(database.<Integer>write(c -> 1)).isEqualTo(1);
  }

  @Test
  void open_lockedExclusively_saysSo() throws SQLException {
    try (Connection other = connect();
        Statement sql = other.createStatement()) {
      sql.execute("BEGIN EXCLUSIVE");
      assertThatTrouble(own.database()::open, StoreTrouble.LOCKED);
    }
  }

  @Test
  void open_readOnlyFile_saysSo() throws Exception {
    own.database().open();
    assertThat(own.file().toFile().setWritable(false)).isTrue();
    boolean immutable = Files.isWritable(own.file()) && change("+i");
    try {
      assumeFalse(Files.isWritable(own.file()), "this user may write everything");
      assertThatTrouble(own.database()::open, StoreTrouble.READ_ONLY)
          .hasMessageContaining("the file or its folder is read-only; give");
    } finally {
      if (immutable) {
        change("-i");
      }
    }
  }

  @Test
  void write_sqliteReportsReadOnly_saysSo() throws SQLException {
    own.database().open();
    try (Connection readOnly =
            DriverManager.getConnection("jdbc:sqlite:file:" + own.file() + "?mode=ro");
        Statement sql = readOnly.createStatement()) {
      assertThatThrownBy(() -> sql.execute("INSERT INTO room (name) VALUES ('a')"))
          .isInstanceOfSatisfying(
              SQLException.class,
              e ->
                  assertThat(StoreException.of(own.file(), e).trouble())
                      .isEqualTo(StoreTrouble.READ_ONLY));
    }
  }

  @Test
  void open_headerOverwritten_saysDamaged() throws IOException {
    Files.writeString(own.file(), "These are the harvest notes of 2025. ".repeat(200));
    assertThatTrouble(own.database()::open, StoreTrouble.DAMAGED)
        .hasMessageContaining("put the newest copy in its place with 'rindward restore'");
  }

  @Test
  void open_truncatedFile_saysDamaged() throws IOException {
    try (Database database = own.database()) {
      database.open();
    }
    try (RandomAccessFile file = new RandomAccessFile(own.file().toFile(), "rw")) {
      file.setLength(file.length() / 2);
    }
    assertThatTrouble(own.database()::open, StoreTrouble.DAMAGED);
  }

  @Test
  void write_diskFull_saysSoLosesNothingAndWorksOnceThereIsRoom() {
    Database database = own.database();
    Journal journal = new Journal(database);
    append(journal, "one", "small");
    database.write(c -> pragma(c, "max_page_count = 1"));

    assertThatTrouble(() -> append(journal, "two", "x".repeat(100_000)), StoreTrouble.FULL)
        .hasMessageContaining("the disk is full; free some space on it");
    database.write(c -> pragma(c, "max_page_count = 1000000"));
    append(journal, "three", "y".repeat(100_000));

    List<String> requests = new ArrayList<>();
    journal.since(0, entry -> requests.add(entry.request()));
    assertThat(requests).containsExactly("one", "three");
  }

  @Test
  void write_workFails_leavesNothingOfIt() {
    Database database = own.database();
    assertThatThrownBy(
            () ->
                database.write(
                    c -> {
                      RoomIds.idOf(c, "curing");
                      throw new IllegalStateException("half way");
                    }))
        .hasMessage("half way");
    assertThat(database.<Long>read(c -> RoomIds.find(c, "curing"))).isZero();
  }

  @Test
  void read_cannotWrite() {
    assertThatTrouble(
        () -> own.database().read(c -> RoomIds.idOf(c, "curing")), StoreTrouble.READ_ONLY);
  }

  @Test
  void close_twiceAndThenUse_opensAgain() {
    Database database = own.database();
    database.open();
    database.close();
    database.close();
    assertThatCode(() -> database.write(c -> 1)).doesNotThrowAnyException();
  }

  @Test
  void aForgottenConnectionIsNoticed() throws Exception {
    try (Connection forgotten = connect();
        Statement sql = forgotten.createStatement()) {
      sql.execute("CREATE TABLE t (a)");
      assertThat(own.openFiles()).contains(own.file().toString());
    }
    assertThat(own.openFiles()).isEmpty();
  }

  private static AbstractThrowableAssert<?, ? extends Throwable> assertThatTrouble(
      ThrowingCallable work, StoreTrouble trouble) {
    return assertThatThrownBy(work)
        .isInstanceOfSatisfying(
            StoreException.class, e -> assertThat(e.trouble()).isEqualTo(trouble));
  }

  private static void append(Journal journal, String request, String body) {
    journal.append(request, "lot", OptionalLong.empty(), 0, "Ada", body);
  }

  private static String pragma(Connection connection, String pragma) throws SQLException {
    try (Statement sql = connection.createStatement();
        ResultSet row = sql.executeQuery("PRAGMA " + pragma)) {
      return row.getString(1);
    }
  }

  private Connection connect() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + own.file());
  }

  private void tell(String statement) throws SQLException {
    try (Connection connection = connect();
        Statement sql = connection.createStatement()) {
      sql.execute(statement);
    }
  }

  private int ask(String query) throws SQLException {
    try (Connection connection = connect();
        Statement sql = connection.createStatement();
        ResultSet row = sql.executeQuery(query)) {
      return row.getInt(1);
    }
  }

  /** Permissions do not bind root; an immutable file does, where the file system has that. */
  private boolean change(String attribute) throws InterruptedException {
    try {
      return new ProcessBuilder("chattr", attribute, own.file().toString()).start().waitFor() == 0;
    } catch (IOException noSuchCommand) {
      return false;
    }
  }
}
