package rindward.controller.store;

import org.sqlite.SQLiteErrorCode;

/** Why the database could not be used, and what the grower can do about it. */
public enum StoreTrouble {
  MISSING_FOLDER("its folder does not exist; create the folder or correct the path"),
  NOT_A_FILE("there is a folder of that name; correct the path"),
  READ_ONLY(
      "the file or its folder is read-only; give the program's user the right to write there, or"
          + " mount the disk for writing"),
  LOCKED("another program keeps it locked; close that program, or try again when it has finished"),
  FULL("the disk is full; free some space on it"),
  DAMAGED(
      "it is damaged or not a database; stop the program and put the newest copy in its place with"
          + " 'rindward restore'"),
  FOREIGN("it is the database of another program; correct the path"),
  NOT_MADE_YET(
      "it is not there yet, or not of this version; control makes it when it starts: start it, or"
          + " look at why it does not"),
  NEWER_SCHEMA(
      "it was written by a newer version of this program; use that version, or the copy made before"
          + " the update"),
  DISK_FAILING("the disk reported an error; check the card or disk and its cable"),
  CANNOT_OPEN("it cannot be opened; check that the path is right and may be read and written"),
  NO_LIBRARY(
      "the SQLite library cannot be loaded; name a folder that is not mounted noexec with"
          + " -Dorg.sqlite.tmpdir=FOLDER"),
  OTHER("SQLite refused it");

  private final String sentence;

  StoreTrouble(String sentence) {
    this.sentence = sentence;
  }

  /** Returns cause and remedy, as the second half of a sentence. */
  public String sentence() {
    return sentence;
  }

  /** Returns what a result code of SQLite means here. */
  static StoreTrouble of(SQLiteErrorCode code) {
    return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
      case SQLITE_BUSY, SQLITE_LOCKED -> LOCKED;
      case SQLITE_READONLY, SQLITE_PERM -> READ_ONLY;
      case SQLITE_FULL -> FULL;
      case SQLITE_CORRUPT, SQLITE_NOTADB -> DAMAGED;
      case SQLITE_IOERR -> DISK_FAILING;
      case SQLITE_CANTOPEN -> CANNOT_OPEN;
      default -> OTHER;
    };
  }
}
