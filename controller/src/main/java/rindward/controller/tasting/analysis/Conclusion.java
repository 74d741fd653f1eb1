package rindward.controller.tasting.analysis;

/**
 * One thing that a flight's scores say, or cannot say.
 *
 * @param kind which question it answers
 * @param sentence the answer, for people
 */
public record Conclusion(Kind kind, String sentence) {
  /** The questions a result answers, in the order in which they are told. */
  public enum Kind {
    /** Nothing could be tested, and why. */
    NO_TEST(false),
    /** Which samples were held apart, or why none can be although the panel told them apart. */
    DIFFERENCE(false),
    /** The panel did not tell the samples apart. */
    NO_DIFFERENCE(false),
    /** How steady each panelist was. */
    REPEATABILITY(false),
    /** Which cups or samples were left out. */
    LEFT_OUT(false),
    /** How blind the session was, where it was not. */
    BLINDING(false),
    /** The result rests on too little to speak of a variety. */
    EARLY_IMPRESSION(false),
    /** The chance of so much difference by accident. */
    CHANCE(true),
    /** How pairs were compared, and by which test. */
    METHOD(true),
    /** How far the panelists agree. */
    AGREEMENT(true);

    private final boolean isProof;

    Kind(boolean isProof) {
      this.isProof = isProof;
    }

    /** Tells whether it proves what the others say, instead of being something to act on. */
    public boolean isProof() {
      return isProof;
    }
  }
}
