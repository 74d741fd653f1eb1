package rindward.controller.store.copies;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import rindward.controller.store.Database;
import rindward.controller.store.Soundness;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoreFiles;

/**
 * The copies of a database, in a folder of their own. A copy is made while the database is in use,
 * is one state of it throughout, and gets its name only when it has been read back and found whole.
 * It takes about as long as reading the whole file and waits for nobody; for one thread that has
 * nothing else to do.
 */
public final class Copies {
  private static final String UNFINISHED = ".part";

  /** What a copy leaves free on its disk, for the shed to go on with. */
  private static final long LEFT_FREE_BYTES = 100_000_000;

  private final Database database;
  private final Path folder;
  private final ZoneId zone;
  private final CopyNames names;

  /**
   * @param folder where they lie; made when it is not there
   * @param zone whose nights and weeks are meant
   */
  public Copies(Database database, Path folder, ZoneId zone) {
    this.database = database;
    this.folder = folder;
    this.zone = zone;
    this.names = new CopyNames(database.file().getFileName().toString());
  }

  /** Returns every finished copy by the moment it was made, newest first; empty without any. */
  public NavigableMap<Instant, Path> all() throws IOException {
    NavigableMap<Instant, Path> all = new TreeMap<>(Comparator.reverseOrder());
    if (Files.isDirectory(folder)) {
      try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, names.stem() + "*.db")) {
        files.forEach(
            file -> names.moment(file.getFileName().toString()).ifPresent(at -> all.put(at, file)));
      }
    }
    return all;
  }

  /** Returns the newest copy; empty when there is none or the folder cannot be read. */
  public Optional<Path> newest() {
    try {
      return all().values().stream().findFirst();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** Tells whether the last night has gone by without a copy. */
  public boolean isDue(Instant now) throws IOException {
    return Rotation.isDue(all().keySet(), now, zone);
  }

  /**
   * Makes a copy and then lets go of those that are not kept any longer.
   *
   * @return the new copy
   * @throws IOException in one sentence; what there was before is still there
   */
  public Path make(Instant now) throws IOException {
    Path copy = folder.resolve(names.of(now));
    Path unfinished = folder.resolve(copy.getFileName() + UNFINISHED);
    try {
      Files.createDirectories(folder);
      clearUnfinished();
      checkRoom();
      database.copyTo(unfinished);
      Optional<String> flaw = Soundness.flaw(unfinished);
      if (flaw.isPresent()) {
        throw new IOException("what was written was not whole: " + flaw.get());
      }
      StoreFiles.putInPlace(unfinished, copy);
    } catch (IOException | StoreException e) {
      takeAway(unfinished);
      throw new IOException("the copy " + copy + " could not be made: " + e.getMessage(), e);
    }
    letGo();
    return copy;
  }

  private void letGo() throws IOException {
    Map<Instant, Path> all = all();
    Set<Instant> kept = Rotation.kept(all.keySet(), zone);
    for (Map.Entry<Instant, Path> copy : all.entrySet()) {
      if (!kept.contains(copy.getKey())) {
        Files.delete(copy.getValue());
      }
    }
  }

  /** Takes away what a power cut left half done. */
  private void clearUnfinished() throws IOException {
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(folder, names.stem() + "*" + UNFINISHED + "*")) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
  }

  private static void takeAway(Path unfinished) {
    try {
      Files.deleteIfExists(unfinished);
    } catch (IOException e) {
      // Why there is no copy matters more; the next one clears up.
    }
  }

  private void checkRoom() throws IOException {
    long needed = StoreFiles.bytes(database.file()) + LEFT_FREE_BYTES;
    long free = Files.getFileStore(folder).getUsableSpace();
    if (free < needed) {
      throw new IOException(
          "its disk has "
              + free / 1_000_000
              + " MB left but "
              + needed / 1_000_000
              + " MB are needed; free some space, or name a folder on another disk as"
              + " store.backups");
    }
  }
}
