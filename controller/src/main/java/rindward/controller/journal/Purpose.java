package rindward.controller.journal;

/** What a sound fruit is used for, or set aside for. */
public enum Purpose {
  KITCHEN("kitchen"),
  SOLD("sold"),
  /** A tasting. */
  PANEL("panel"),
  /** Kept to the end to see how long it lasts. */
  KEEPER_TEST("keeper-test"),
  SEED("seed"),
  /** To be cut again when a first look left a doubt. */
  SECOND_LOOK("second-look");

  private final String word;

  Purpose(String word) {
    this.word = word;
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
