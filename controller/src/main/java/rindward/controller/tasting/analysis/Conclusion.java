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
    NO_TEST,
    /** The panel told samples apart. */
    DIFFERENCE,
    /** The panel did not tell the samples apart. */
    NO_DIFFERENCE,
    /** Which samples were held apart, all pairs allowed for. */
    PAIRS,
    /** How far the panelists agree. */
    AGREEMENT,
    /** How steady each panelist was. */
    REPEATABILITY,
    /** Whose scores, or which samples, were left out. */
    LEFT_OUT,
    /** How blind the session was. */
    BLINDING,
    /** What the result speaks of. */
    UNIT,
    /** The result rests on too little to speak of a variety. */
    EARLY_IMPRESSION
  }
}
