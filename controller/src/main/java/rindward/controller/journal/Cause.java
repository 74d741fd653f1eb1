package rindward.controller.journal;

/** Why a fruit was lost. */
public enum Cause {
  ROT("rot"),
  SOFT("soft"),
  MOULD("mould"),
  SPROUTED("sprouted"),
  SHRIVELLED("shrivelled"),
  FROZEN("frozen"),
  WOUNDED("wounded"),
  ANIMALS("animals"),
  /** Eaten because it was failing: a meal, and a failure all the same. */
  EATEN_FAILING("eaten-failing"),
  OTHER("other");

  private final String word;

  Cause(String word) {
    this.word = word;
  }

  /** Tells whether the fruit failed by itself, so that others of its lot may follow. */
  public boolean isDecay() {
    return switch (this) {
      case ROT, SOFT, MOULD, SPROUTED, SHRIVELLED, EATEN_FAILING -> true;
      case FROZEN, WOUNDED, ANIMALS, OTHER -> false;
    };
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
