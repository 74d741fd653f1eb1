package rindward.controller.variety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.Grade;
import rindward.controller.lot.Lot;
import rindward.controller.readiness.RipeShare;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;

/**
 * Does it ripen here? What is not known of a lot stays out: doubt is no failure. The shares that
 * decide are common practice.
 *
 * @param answer in a few words
 * @param ripe fruits that were ripe when they were picked; null where nobody knows how many
 * @param fruits fruits of which that is known, or of whose lot some were cut
 * @param seasons in how many years
 * @param reasons each one sentence
 */
public record Ripening(
    Answer answer, @Nullable Integer ripe, int fruits, int seasons, List<String> reasons) {
  /** The answers. */
  public enum Answer {
    NOT_KNOWN("not known whether it ripens here"),
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

  /** How many fruits of some lots were ripe: between least and most, of all. */
  private record Count(int least, int most, int all, boolean hasRipe, boolean hasUnripe) {
    static final Count NONE = new Count(0, 0, 0, false, false);

    static Count of(Grown grown) {
      int all = grown.lot().count();
      Ripeness ripeness = Ripeness.of(grown.lot(), grown.crop());
      Optional<RipeShare> seen = ripeness.share().filter(s -> isBy(s, ripeness.level()));
      if (seen.isPresent()) {
        RipeShare share = seen.get();
        return new Count(
            (all * share.lowPerMille() + 999) / 1000,
            all * share.highPerMille() / 1000,
            all,
            share.ripe() > 0,
            share.hasUnripe());
      }
      int ripe = ripeness.level() == Level.RIPE ? all : 0;
      return isOpen(ripeness) && grown.lot().grade() != Grade.GREEN
          ? NONE
          : new Count(ripe, ripe, all, ripe > 0, ripe == 0);
    }

    /** Tells whether the fruits that were cut say how many were ripe, and not its age. */
    private static boolean isBy(RipeShare share, Level level) {
      return switch (level) {
        case RIPE -> share.hasUnripe();
        case DOUBTFUL -> true;
        case NEVER -> share.isMostlyUnripe();
        case RIPENS -> false;
      };
    }

    private static boolean isOpen(Ripeness ripeness) {
      return ripeness.level() == Level.DOUBTFUL;
    }

    Count plus(Count other) {
      return new Count(
          least + other.least,
          most + other.most,
          all + other.all,
          hasRipe || other.hasRipe,
          hasUnripe || other.hasUnripe);
    }

    boolean hasFailed() {
      return 2 * most < all;
    }

    String words() {
      return (least == most ? "" + least : least + " to " + most)
          + " of "
          + all
          + " fruits ripe when picked.";
    }
  }

  /** Judges the lots of one variety, all of them. */
  static Ripening of(List<Grown> lots) {
    List<String> reasons = new ArrayList<>();
    Map<Integer, Count> seasons = new TreeMap<>();
    List<Grown> noted = lots.stream().filter(Ripening::isNoted).toList();
    for (Grown grown : noted) {
      Count count = Count.of(grown);
      if (count.all() > 0) {
        seasons.merge(grown.season(), count, Count::plus);
      }
    }
    seasons.forEach((season, count) -> reasons.add(season + ": " + count.words()));
    noted.stream().filter(g -> !isRipe(g)).forEach(g -> reasons.add(sentence(g)));
    if (reasons.isEmpty()) {
      reasons.add("Nobody noted whether it ripened.");
    }
    Count all = seasons.values().stream().reduce(Count.NONE, Count::plus);
    return new Ripening(
        answer(all, seasons.values()),
        all.all() > 0 && all.least() == all.most() ? all.least() : null,
        all.all(),
        seasons.size(),
        reasons);
  }

  private static Answer answer(Count all, Collection<Count> seasons) {
    if (all.all() == 0) {
      return Answer.NOT_KNOWN;
    }
    if (seasons.stream().allMatch(Count::hasFailed)) {
      return seasons.size() > 1 ? Answer.TOO_LONG : Answer.BARELY;
    }
    if (4 * all.least() >= 3 * all.all()) {
      return Answer.RIPENS;
    }
    return all.hasRipe() && all.hasUnripe() ? Answer.IN_PART : Answer.NOT_KNOWN;
  }

  private static boolean isNoted(Grown grown) {
    Lot lot = grown.lot();
    return grown.crop().maturity().isPresent()
        && (lot.grade() != null || !lot.ripeness().isEmpty());
  }

  private static boolean isRipe(Grown grown) {
    return Ripeness.of(grown.lot(), grown.crop()).level() == Level.RIPE;
  }

  private static String sentence(Grown grown) {
    Ripeness ripeness = Ripeness.of(grown.lot(), grown.crop());
    return grown.lot().code()
        + " ("
        + grown.lot().count()
        + (ripeness.level() == Level.DOUBTFUL ? ", not known" : "")
        + "): "
        + String.join(" ", ripeness.reasons());
  }
}
