package rindward.controller.crop;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/**
 * Finds the word that a person probably meant. The distance is the number of single letters to add,
 * drop, change or swap with their neighbour (Damerau 1964; optimal string alignment).
 */
public final class Nearest {
  private Nearest() {}

  /**
   * Returns the candidate closest to {@code word}, the first of equals in alphabetical order; empty
   * if more than a third of the longer word, or more than three letters, would have to change.
   */
  public static Optional<String> to(String word, Collection<String> candidates) {
    return candidates.stream()
        .filter(
            candidate -> {
              int longer = Math.max(word.length(), candidate.length());
              return distance(word, candidate) <= Math.min(3, (longer + 2) / 3);
            })
        .min(
            Comparator.comparingInt((String candidate) -> distance(word, candidate))
                .thenComparing(Comparator.naturalOrder()));
  }

  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        if (i > 1
            && j > 1
            && a.charAt(i - 1) == b.charAt(j - 2)
            && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], 1 + d[i - 2][j - 2]);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
