package rindward.controller.store.copies;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import rindward.controller.store.Database;
import rindward.controller.store.Soundness;
import rindward.controller.store.StoreException;
import rindward.controller.store.StoreFiles;
import rindward.controller.store.StoreTrouble;

/**
 * What happens to the database before anything is read of it. One that is damaged is set aside and
 * a new one begun, for the rooms must be run and their record kept; never silently, and nothing is
 * thrown away. All of it is read only when the program was cut off the last time: then a log was
 * left behind, or a page that is not whole. A database that went bad on a quiet disk is found when
 * all of it is read soon after the start, which no start has to wait for.
 */
public final class StartCheck {
  /**
   * Where a database says how large its pages are: two bytes, 1 for 65,536 (SQLite's file format).
   */
  private static final int PAGE_SIZE_OFFSET = 16;

  private StartCheck() {}

  /**
   * Looks, and sets aside what cannot be used.
   *
   * @return what the grower must know, in one sentence; empty when all is well, and when the
   *     database cannot be used for a reason that may pass, such as a lock
   */
  public static Optional<String> look(Database database, Copies copies, Instant now) {
    Path file = database.file();
    try {
      if (!Files.exists(file) || Files.size(file) == 0) {
        return copies.newest().isEmpty()
            ? Optional.empty()
            : Optional.of(begunAnew(file, "is missing or empty", now, copies));
      }
      return isDamaged(database)
          ? Optional.of(begunAnew(file, "is damaged", now, copies))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.of(
          "new only in part: the damaged database " + file + " could not be set aside, " + e);
    }
  }

  /**
   * Reads all of the database, while others go on reading and writing, and changes nothing.
   *
   * @return what is damaged and what to do, as the rest of a sentence that begins "The store is";
   *     empty when it is whole
   * @throws StoreException when it cannot be read for a reason that may pass
   */
  public static Optional<String> damage(Database database, Copies copies) {
    Optional<String> flaw;
    try {
      flaw = database.read(Soundness::flaw);
    } catch (StoreException e) {
      if (e.trouble() != StoreTrouble.DAMAGED) {
        throw e;
      }
      flaw = Optional.of("it cannot be read to its end");
    }
    return flaw.map(found -> "damaged, " + database.file() + " (" + found + "); " + offer(copies));
  }

  private static boolean isDamaged(Database database) throws IOException {
    Path log = StoreFiles.log(database.file());
    boolean wasCutOff =
        (Files.exists(log) && Files.size(log) > 0) || !endsWithAPage(database.file());
    try {
      database.open();
      return wasCutOff && database.read(Soundness::quickFlaw).isPresent();
    } catch (StoreException e) {
      return e.trouble() == StoreTrouble.DAMAGED;
    } finally {
      database.close();
    }
  }

  /** What is no file at all is for the opening to tell. */
  private static boolean endsWithAPage(Path file) throws IOException {
    if (!Files.isRegularFile(file)) {
      return true;
    }
    try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "r")) {
      if (bytes.length() < PAGE_SIZE_OFFSET + Short.BYTES) {
        return false;
      }
      bytes.seek(PAGE_SIZE_OFFSET);
      int said = bytes.readUnsignedShort();
      return said != 0 && bytes.length() % (said == 1 ? 65_536 : said) == 0;
    }
  }

  private static String begunAnew(Path file, String why, Instant now, Copies copies)
      throws IOException {
    Path aside = StoreFiles.setAside(file, "damaged", now);
    String kept = Files.exists(aside) ? " and was set aside as " + aside : "";
    return "new, for the one before, " + file + ", " + why + kept + "; " + offer(copies);
  }

  private static String offer(Copies copies) {
    return copies
        .newest()
        .map(
            copy ->
                "the newest copy is "
                    + copy
                    + ": stop the program and go on from it with 'rindward restore'")
        .orElse("there is no copy to go on from");
  }
}
