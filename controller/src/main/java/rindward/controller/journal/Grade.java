package rindward.controller.journal;

/** How ripe a lot looked when it was brought in: one tap on harvest night. */
public enum Grade {
  RIPE("ripe"),
  DOUBTFUL("doubtful"),
  GREEN("green");

  private final String word;

  Grade(String word) {
    this.word = word;
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
