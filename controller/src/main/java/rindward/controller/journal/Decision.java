package rindward.controller.journal;

/** What the grower means to do with a variety next season. */
public enum Decision {
  GROW_AGAIN("grow-again"),
  /** Once more, and done otherwise: the reason says how. */
  TRY_AGAIN("try-again"),
  DROP("drop");

  private final String word;

  Decision(String word) {
    this.word = word;
  }

  /** Returns the decision as part of a sentence. */
  public String words() {
    return word.replace('-', ' ');
  }

  /** Returns the word used in commands and files. */
  @Override
  public String toString() {
    return word;
  }
}
