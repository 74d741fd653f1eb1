package rindward.controller.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * A database in use is up to three files. They are moved together, the write-ahead log first: a log
 * beside another database than its own would be taken for that one's.
 */
public final class StoreFiles {
  /** A moment in a file's name; sorted by name is sorted by time. */
  public static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private static final List<String> ENDINGS = List.of("-wal", "-shm", "");

  private StoreFiles() {}

  /** Returns the path of a database's write-ahead log. */
  public static Path log(Path store) {
    return beside(store, "-wal");
  }

  /** Returns the path that has {@code ending} added to its name. */
  public static Path beside(Path store, String ending) {
    return store.resolveSibling(store.getFileName() + ending);
  }

  /** Returns the bytes of a database and its log; 0 for what is not there. */
  public static long bytes(Path store) throws IOException {
    long bytes = 0;
    for (Path file : List.of(store, log(store))) {
      bytes += Files.exists(file) ? Files.size(file) : 0;
    }
    return bytes;
  }

  /** Returns when a database or its log was last written; the epoch when neither is there. */
  public static FileTime changed(Path store) {
    FileTime newest = FileTime.fromMillis(0);
    for (Path file : List.of(store, log(store))) {
      try {
        FileTime time = Files.getLastModifiedTime(file);
        newest = time.compareTo(newest) > 0 ? time : newest;
      } catch (IOException notThere) {
        // Whoever reads it says so.
      }
    }
    return newest;
  }

  /**
   * Moves a database aside, in its own folder.
   *
   * @param why a word for the new name, as {@code damaged}
   * @return the new path
   */
  public static Path setAside(Path store, String why, Instant now) throws IOException {
    Path aside = beside(store, "." + why + "-" + MOMENT.format(now));
    for (String ending : ENDINGS) {
      Path file = beside(store, ending);
      if (Files.exists(file)) {
        Files.move(file, beside(aside, ending));
      }
    }
    return aside;
  }

  /** Moves a finished file to its place on the same disk: after a power cut it is there or not. */
  public static void putInPlace(Path file, Path place) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
    Files.move(file, place, StandardCopyOption.ATOMIC_MOVE);
    Path folder = place.toAbsolutePath().getParent();
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      // Where a folder cannot be opened, its entries are the system's own business.
    }
  }
}
