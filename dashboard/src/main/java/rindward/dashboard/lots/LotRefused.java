package rindward.dashboard.lots;

/** Why something said of a lot is not kept, in a sentence for the person who said it. */
public final class LotRefused extends Exception {
  private static final long serialVersionUID = 1;

  /** What kind of no it is. */
  public enum Why {
    /** It cannot be read. */
    MALFORMED,
    /** It cannot stand beside what was said before. */
    CONTRADICTED,
    /** Somebody else has spoken of the lot in between. */
    STALE,
    /** There is nothing of that name or number. */
    UNKNOWN
  }

  private final Why why;

  public LotRefused(Why why, String sentence) {
    super(sentence);
    this.why = why;
  }

  public Why why() {
    return why;
  }
}
