package rindward.controller.store.copies;

import java.io.IOException;
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
 * left behind, or a page that is not whole. A database that went bad on a quiet disk is found by
 * the nightly copy.
 */
public final class StartCheck {
  /** Of a file that was written to its end, and of any other the opening says that it is short. */
  private static final int PAGE_BYTES = 4_096;

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

  private static boolean isDamaged(Database database) throws IOException {
    Path log = StoreFiles.log(database.file());
    boolean wasCutOff =
        (Files.exists(log) && Files.size(log) > 0) || Files.size(database.file()) % PAGE_BYTES != 0;
    try {
      database.open();
      return wasCutOff && database.read(Soundness::quickFlaw).isPresent();
    } catch (StoreException e) {
      return e.trouble() == StoreTrouble.DAMAGED;
    } finally {
      database.close();
    }
  }

  private static String begunAnew(Path file, String why, Instant now, Copies copies)
      throws IOException {
    Path aside = StoreFiles.setAside(file, "damaged", now);
    String kept = Files.exists(aside) ? " and was set aside as " + aside : "";
    String offer =
        copies
            .newest()
            .map(
                copy ->
                    "the newest copy is "
                        + copy
                        + ": stop the program and go on from it with 'rindward restore'")
            .orElse("there is no copy to go on from");
    return "new, for the one before, " + file + ", " + why + kept + "; " + offer;
  }
}
