package rindward.controller.crop;

/**
 * Something found in a fruit that may make people ill. Whether it does, and what follows from it,
 * depends on the crop: {@link HarmRule}.
 */
public enum Harm {
  BITTER("bitter"),
  GREEN("green"),
  MOULD("mould"),
  ROT("rot");

  private final String word;

  Harm(String word) {
    this.word = word;
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
