package rindward.controller.tasting;

import java.util.List;

/** The steps an attribute is scored in; each step has its words, because people taste in words. */
public enum Scale {
  /** Nine points from dislike to like (Peryam and Pilgrim 1957, Food Technology 11, 9-14). */
  LIKING(
      1,
      "dislike extremely",
      "dislike very much",
      "dislike moderately",
      "dislike slightly",
      "neither like nor dislike",
      "like slightly",
      "like moderately",
      "like very much",
      "like extremely"),
  /** How much of something there is. Common practice. */
  AMOUNT(1, "none", "slight", "moderate", "strong", "very strong"),
  /** Where something lies between two ends, which the attribute names. Common practice. */
  BETWEEN(1, "fully the first", "more the first", "between", "more the second", "fully the second"),
  /** Yes or no. */
  YES_NO(0, "no", "yes");

  private final int lowest;
  private final List<String> words;

  Scale(int lowest, String... words) {
    this.lowest = lowest;
    this.words = List.of(words);
  }

  /** Returns the lowest score. */
  public int lowest() {
    return lowest;
  }

  /** Returns the highest score. */
  public int highest() {
    return lowest + words.size() - 1;
  }

  /** Tells whether a score lies on the scale. */
  public boolean contains(int score) {
    return lowest <= score && score <= highest();
  }

  /** Returns the words of each score, from the lowest to the highest. */
  public List<String> words() {
    return words;
  }
}
