package rindward.controller.room;

/** What the grower uses a room for. Set by a person, never by the program. */
public enum RoomPurpose {
  CURING("curing"),
  STORAGE("storage");

  private final String word;

  RoomPurpose(String word) {
    this.word = word;
  }

  /** Returns the word used in settings, files and sentences. */
  public String word() {
    return word;
  }
}
