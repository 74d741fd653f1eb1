package rindward.controller.variety;

import java.util.Locale;

/**
 * One of the three answers on a variety against what is needed of it, as a chance. At nine in ten
 * it is yes, at one in ten no (common practice: the seasons of known truth in MEASURED.md say how
 * often that is wrong).
 *
 * @param chancePerMille that the need is met; 500 where nothing was seen
 * @param sentence the fact, with its interval and the chance; ends with a full stop
 */
public record Prospect(Says says, int chancePerMille, String sentence) {
  private static final int YES_PER_MILLE = 900;
  private static final int NO_PER_MILLE = 100;
  private static final int EVEN = 500;

  /** What it comes to. */
  public enum Says {
    YES,
    NO,
    OPEN,
    NOT_NEEDED
  }

  static Prospect of(double chance, String sentence) {
    int perMille = (int) Math.round(1000 * chance);
    Says says =
        perMille >= YES_PER_MILLE ? Says.YES : perMille <= NO_PER_MILLE ? Says.NO : Says.OPEN;
    return new Prospect(says, perMille, sentence);
  }

  static Prospect unknown(String sentence) {
    return new Prospect(Says.OPEN, EVEN, sentence);
  }

  static Prospect notNeeded(String sentence) {
    return new Prospect(Says.NOT_NEEDED, 1000, sentence);
  }

  /** Tells whether it is asked for and likelier not met than met. */
  boolean isUnlikely() {
    return says != Says.NOT_NEEDED && chancePerMille < EVEN;
  }

  /** Returns a chance as people say it: "93 in 100"; never none, never all. */
  static String inHundred(double chance) {
    long hundredths = Math.max(1, Math.min(99, Math.round(100 * chance)));
    return String.format(Locale.ROOT, "%d in 100", hundredths);
  }
}
