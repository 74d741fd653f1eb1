package rindward.controller.store.copies;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import rindward.controller.settings.OwnFile;
import rindward.controller.store.Database;
import rindward.controller.store.Soundness;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoreFiles;

/**
 * Puts a copy in the place of a database. The copy is first read to its end where it will lie, on
 * this board's disk, and brought up to this program's schema; only then does anything change, and
 * what was there is kept beside it. Nobody else may use the database meanwhile.
 */
public final class Restoring {
  private Restoring() {}

  /**
   * Puts {@code copy} in the place of {@code store}.
   *
   * @param copy a database of this program, with its write-ahead log beside it if it has one; not
   *     changed
   * @param isPeopleOfCopy whether those may sign in who could when the copy was made, with their
   *     passwords of then; else those who may now, as far as that can be known
   * @throws IOException in one sentence; then {@code store} is as it was
   */
  public static Restored restore(Path store, Path copy, boolean isPeopleOfCopy, Instant now)
      throws IOException {
    Path trial = StoreFiles.beside(store, ".restoring");
    try {
      clear(trial);
      take(copy, trial);
      check(copy, trial);
      PeopleAfter people = Files.exists(store) ? settle(store) : PeopleAfter.NOT_KNOWN;
      PeopleAfter wanted = isPeopleOfCopy ? PeopleAfter.NOT_KNOWN : people;
      List<String> leftOut;
      List<String> mayWork;
      try (Database database = new Database(trial)) {
        leftOut = wanted.settle(database, now);
        mayWork = PeopleAfter.names(database);
      }
      Optional<Path> before =
          Files.exists(store)
              ? Optional.of(StoreFiles.setAside(store, "replaced", now))
              : Optional.empty();
      StoreFiles.putInPlace(trial, store);
      return new Restored(before, mayWork, leftOut, wanted.isKnown());
    } finally {
      clear(trial);
    }
  }

  private static void take(Path copy, Path trial) throws IOException {
    if (!Files.isRegularFile(copy)) {
      throw new IOException("the copy " + copy + " cannot be used: there is no such file");
    }
    try {
      bring(copy, trial);
      if (Files.exists(StoreFiles.log(copy))) {
        bring(StoreFiles.log(copy), StoreFiles.log(trial));
      }
    } catch (IOException e) {
      throw new IOException(
          "the copy " + copy + " could not be brought to " + trial.getParent() + ": " + e, e);
    }
  }

  private static void bring(Path file, Path to) throws IOException {
    OwnFile.make(to);
    try (OutputStream into = Files.newOutputStream(to)) {
      Files.copy(file, into);
    }
  }

  private static void check(Path copy, Path trial) throws IOException {
    Optional<String> flaw = Files.size(trial) == 0 ? Optional.of("it is empty") : Optional.empty();
    if (flaw.isEmpty()) {
      try (Database database = new Database(trial)) {
        database.open();
      } catch (StoreException e) {
        flaw = Optional.of(e.trouble().sentence());
      }
    }
    if (flaw.isEmpty()) {
      flaw = Soundness.flaw(trial);
    }
    if (flaw.isPresent()) {
      throw new IOException("the copy " + copy + " cannot be used: " + flaw.get());
    }
  }

  /**
   * Brings what is in the log of a database into its file, if it is whole enough for that, and asks
   * it who may sign in.
   */
  private static PeopleAfter settle(Path store) {
    try (Database database = new Database(store)) {
      database.open();
      return PeopleAfter.of(database);
    } catch (StoreException e) {
      // It is replaced because something is wrong with it; file and log are kept as they are.
      return PeopleAfter.NOT_KNOWN;
    }
  }

  private static void clear(Path trial) throws IOException {
    Files.deleteIfExists(StoreFiles.log(trial));
    Files.deleteIfExists(StoreFiles.beside(trial, "-shm"));
    Files.deleteIfExists(trial);
  }
}
