package rindward.controller.tasting.design;

/** How much the tasters could know of what they tasted. */
public enum Blinding {
  /** Nobody at the table knew which code was which. */
  FULL("Fully blind."),
  /** Someone at the table had cooked, cut or coded, or a sample could be told by its look. */
  PARTIAL("Only partly blind: someone may have known a sample."),
  /** Everybody knew. */
  OPEN("Not blind: the tasters knew what they ate, and that sways scores.");

  private final String sentence;

  Blinding(String sentence) {
    this.sentence = sentence;
  }

  /** Returns what that means for the result. */
  public String sentence() {
    return sentence;
  }
}
