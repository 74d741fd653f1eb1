package rindward.dashboard.varieties;

/** Why a decision is not kept, in a sentence for the person who made it. */
public final class DecisionRefused extends Exception {
  private static final long serialVersionUID = 1;

  public DecisionRefused(String sentence) {
    super(sentence);
  }
}
