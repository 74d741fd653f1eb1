package rindward.controller.tasting.analysis;

/**
 * How much a result on a variety rests on.
 *
 * @param sample its name
 * @param fruits how many different fruits were tasted; 0 where nobody said which
 * @param sessions in how many sessions
 */
public record Evidence(String sample, int fruits, int sessions) {
  /** Fruits that a verdict on a variety needs. Common practice. */
  public static final int ENOUGH_FRUITS = 3;

  /** Sessions that a verdict on a variety needs. Common practice. */
  public static final int ENOUGH_SESSIONS = 2;

  /** Tells whether this is too little to speak of the variety. */
  public boolean isEarly() {
    return fruits < ENOUGH_FRUITS || sessions < ENOUGH_SESSIONS;
  }

  /** Returns the evidence as part of a sentence. */
  String words() {
    return sample
        + " ("
        + (fruits == 0 ? "not known which fruits" : counted(fruits, "fruit"))
        + ", "
        + counted(sessions, "session")
        + ")";
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
