package rindward.controller.journal;

/** What happened in the field on a day worth writing down. */
public enum FieldDay {
  /** The first female flower opened: no fruit is older. */
  FIRST_FLOWER("first-flower", RipenessSign.FIRST_FLOWER),
  /** A fruit set, and was tagged. */
  FRUIT_SET("fruit-set", RipenessSign.TAGGED_SET);

  private final String word;
  private final RipenessSign sign;

  FieldDay(String word, RipenessSign sign) {
    this.word = word;
    this.sign = sign;
  }

  /** Returns what it is a sign of once the fruit is picked. */
  public RipenessSign sign() {
    return sign;
  }

  /** Returns the word used in commands and files. */
  @Override
  public String toString() {
    return word;
  }
}
