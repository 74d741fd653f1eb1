package rindward.dashboard.tastings;

/** Why something said of a tasting is not kept, in a sentence for the person who said it. */
public final class TastingRefused extends Exception {
  private static final long serialVersionUID = 1;

  /** What kind of no it is. */
  public enum Why {
    /** It cannot be read. */
    MALFORMED,
    /** It cannot stand beside what was said before. */
    CONTRADICTED,
    /** There is no such tasting or taster. */
    UNKNOWN
  }

  private final Why why;

  public TastingRefused(Why why, String sentence) {
    super(sentence);
    this.why = why;
  }

  public Why why() {
    return why;
  }
}
