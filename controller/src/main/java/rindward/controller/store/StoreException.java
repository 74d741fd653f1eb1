package rindward.controller.store;

import java.nio.file.Path;
import java.sql.SQLException;
import org.sqlite.SQLiteException;

/**
 * The database could not be used. The message is one sentence with file, cause and remedy.
 * Unchecked, because any read may fail and only two places can do something about it: the wiring at
 * the start and the border of a request. The control loop never sees one; see {@code SampleLog}.
 */
public final class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final StoreTrouble trouble;

  StoreException(Path file, StoreTrouble trouble, String detail) {
    super(message(file, trouble, detail));
    this.trouble = trouble;
  }

  private StoreException(Path file, StoreTrouble trouble, String detail, Throwable cause) {
    super(message(file, trouble, detail), cause);
    this.trouble = trouble;
  }

  static StoreException of(Path file, SQLException cause) {
    StoreTrouble trouble =
        cause instanceof SQLiteException sqlite
            ? StoreTrouble.of(sqlite.getResultCode())
            : StoreTrouble.OTHER;
    return new StoreException(file, trouble, String.valueOf(cause.getMessage()), cause);
  }

  public static StoreException of(Path file, StoreTrouble trouble, Throwable cause) {
    return new StoreException(file, trouble, String.valueOf(cause.getMessage()), cause);
  }

  /** Returns the kind of failure. */
  public StoreTrouble trouble() {
    return trouble;
  }

  private static String message(Path file, StoreTrouble trouble, String detail) {
    String end = detail.isEmpty() ? "" : " (" + detail + ")";
    return "cannot use the database " + file + ": " + trouble.sentence() + end;
  }
}
