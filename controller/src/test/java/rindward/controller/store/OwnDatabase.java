package rindward.controller.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Gives each test a folder with a database of its own, closes what the test opened, and fails the
 * test when a file of the folder is still open after that: a connection was forgotten.
 */
public final class OwnDatabase implements BeforeEachCallback, AfterEachCallback {
  private static final Path OPEN_FILES = Path.of("/proc/self/fd");

  private final List<Database> opened = new ArrayList<>();
  private Path folder;

  public Path folder() {
    return folder;
  }

  public Path file() {
    return folder.resolve("shed.sqlite");
  }

  /** Returns a database on {@link #file()} that does not wait for locks. */
  public Database database() {
    return database(file());
  }

  public Database database(Path file) {
    Database database = new Database(file, Duration.ofMillis(1));
    opened.add(database);
    return database;
  }

  /** Copies the database as a power cut would leave it: main file and log as they are now. */
  public Path copyAsLeftByPowerCut() throws IOException {
    Path copy = Files.createDirectory(folder.resolve("after-the-power-cut")).resolve("shed.sqlite");
    Files.copy(file(), copy);
    Files.copy(folder.resolve("shed.sqlite-wal"), copy.resolveSibling("shed.sqlite-wal"));
    return copy;
  }

  @Override
  public void beforeEach(ExtensionContext context) throws IOException {
    folder = Files.createTempDirectory("own-database").toRealPath();
  }

  @Override
  public void afterEach(ExtensionContext context) throws IOException {
    opened.forEach(Database::close);
    List<String> forgotten = openFiles();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
    assertThat(forgotten).as("files left open").isEmpty();
  }

  /** Lists the files of the folder that this process holds open; only Linux can tell. */
  public List<String> openFiles() throws IOException {
    List<String> open = new ArrayList<>();
    if (Files.isDirectory(OPEN_FILES)) {
      try (Stream<Path> descriptors = Files.list(OPEN_FILES)) {
        for (Path descriptor : descriptors.toList()) {
          if (Files.isSymbolicLink(descriptor)) {
            open.add(Files.readSymbolicLink(descriptor).toString());
          }
        }
      }
    }
    return open.stream().filter(name -> name.startsWith(folder.toString())).toList();
  }
}
