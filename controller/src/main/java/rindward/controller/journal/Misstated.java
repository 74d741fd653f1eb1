package rindward.controller.journal;

/** A field of a row that cannot be understood; the message is one sentence that names it. */
public final class Misstated extends Exception {
  private static final long serialVersionUID = 1L;

  Misstated(String sentence) {
    super(sentence, null, false, false);
  }

  static Misstated of(String column, String was, String must) {
    return new Misstated(column + " was '" + was + "' but " + must);
  }

  /** Returns the sentence. */
  public String sentence() {
    return String.valueOf(getMessage());
  }
}
