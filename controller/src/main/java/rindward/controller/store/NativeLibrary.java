package rindward.controller.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.sqlite.SQLiteJDBCLoader;

/**
 * Loads SQLite's native library. The driver unpacks it before loading: a temporary folder mounted
 * noexec would kill it, and after a power cut the unpacked file would stay behind for good. So it
 * is unpacked beside the database and removed as soon as it is loaded. Who sets {@code
 * org.sqlite.tmpdir} has decided otherwise, and is left alone.
 */
final class NativeLibrary {
  private static final String FOLDER_PROPERTY = "org.sqlite.tmpdir";
  private static final String PREFIX = ".sqlite-library-";

  private NativeLibrary() {}

  /** Loads the library unless this process already has it. */
  static synchronized void load(Path database) {
    try {
      if (System.getProperty(FOLDER_PROPERTY) != null) {
        SQLiteJDBCLoader.initialize();
        return;
      }
      Path folder = Files.createTempDirectory(database.toAbsolutePath().getParent(), PREFIX);
      System.setProperty(FOLDER_PROPERTY, folder.toString());
      try {
        SQLiteJDBCLoader.initialize();
      } finally {
        System.clearProperty(FOLDER_PROPERTY);
        remove(folder);
      }
    } catch (Exception e) { // as declared by the driver
      throw StoreException.of(database, StoreTrouble.NO_LIBRARY, e);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
