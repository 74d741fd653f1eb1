package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;

/**
 * Does it ripen here? The shares that decide are common practice.
 *
 * @param answer in a few words
 * @param ripe fruits that were ripe when they were picked
 * @param fruits fruits of which that is known
 * @param seasons in how many years
 * @param reasons each one sentence
 */
public record Ripening(Answer answer, int ripe, int fruits, int seasons, List<String> reasons) {
  /** The answers. */
  public enum Answer {
    NOT_KNOWN("nobody noted whether it ripened"),
    RIPENS("ripens here"),
    IN_PART("ripens here in part"),
    /** One season says so: it may have been the season. */
    BARELY("barely ripens here"),
    /** So it was in every one of several seasons. */
    TOO_LONG("too long for this site");

    private final String words;

    Answer(String words) {
      this.words = words;
    }

    /** Returns the answer as people read it. */
    @Override
    public String toString() {
      return words;
    }
  }

  public Ripening {
    reasons = List.copyOf(reasons);
  }

  /** Judges the lots of one variety, all of them. */
  static Ripening of(List<Grown> lots) {
    int ripe = 0;
    int fruits = 0;
    List<String> reasons = new ArrayList<>();
    List<Grown> known = lots.stream().filter(Ripening::isKnown).toList();
    List<Integer> seasons = known.stream().map(Grown::season).distinct().sorted().toList();
    boolean everySeasonFailed = true;
    for (int season : seasons) {
      int ripeNow = 0;
      int fruitsNow = 0;
      for (Grown grown : known) {
        if (grown.season() == season) {
          fruitsNow += grown.lot().count();
          ripeNow += isRipe(grown) ? grown.lot().count() : 0;
        }
      }
      reasons.add(season + ": " + ripeNow + " of " + fruitsNow + " fruits ripe when picked.");
      everySeasonFailed &= 2 * ripeNow < fruitsNow;
      ripe += ripeNow;
      fruits += fruitsNow;
    }
    known.stream().filter(g -> !isRipe(g)).forEach(g -> reasons.add(sentence(g)));
    return new Ripening(
        answer(ripe, fruits, seasons.size(), everySeasonFailed),
        ripe,
        fruits,
        seasons.size(),
        reasons);
  }

  private static Answer answer(int ripe, int fruits, int seasons, boolean everySeasonFailed) {
    if (fruits == 0) {
      return Answer.NOT_KNOWN;
    }
    if (everySeasonFailed) {
      return seasons > 1 ? Answer.TOO_LONG : Answer.BARELY;
    }
    return 4 * ripe >= 3 * fruits ? Answer.RIPENS : Answer.IN_PART;
  }

  private static boolean isKnown(Grown grown) {
    Lot lot = grown.lot();
    return grown.crop().maturity().isPresent()
        && (lot.grade() != null || !lot.ripeness().isEmpty());
  }

  private static boolean isRipe(Grown grown) {
    return Ripeness.of(grown.lot(), grown.crop()).level() == Level.RIPE;
  }

  private static String sentence(Grown grown) {
    return grown.lot().code()
        + " ("
        + grown.lot().count()
        + "): "
        + String.join(" ", Ripeness.of(grown.lot(), grown.crop()).reasons());
  }
}
