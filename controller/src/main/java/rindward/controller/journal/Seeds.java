package rindward.controller.journal;

/** How the seeds of a cut fruit looked: the plainest sign of whether it ever ripened. */
public enum Seeds {
  FULL("full"),
  FLAT("flat");

  private final String word;

  Seeds(String word) {
    this.word = word;
  }

  /** Returns what they tell of the fruit's ripeness at picking. */
  public RipenessSign sign() {
    return this == FULL ? RipenessSign.SEEDS_FULL : RipenessSign.SEEDS_FLAT;
  }

  /** Returns the word used in commands, files and sentences. */
  @Override
  public String toString() {
    return word;
  }
}
