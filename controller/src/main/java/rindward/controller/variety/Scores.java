package rindward.controller.variety;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sheet;
import rindward.controller.variety.liking.Manner;
import rindward.controller.variety.liking.TasteScore;

/**
 * Every score that may speak of a variety, taken out of sessions that are over and of kitchen
 * tastes. A lot that was hurt, off type or not yet cured speaks of nothing; a fruit that was seen
 * to be unripe speaks of its tasters and its session.
 */
final class Scores {
  private static final String KITCHEN = "the kitchen";

  private final List<TasteScore> all = new ArrayList<>();

  private record Answer(String panelist, String code) {}

  private Scores() {}

  /** Returns what was scored for overall liking. */
  static List<TasteScore> of(Collection<List<Grown>> varieties, List<Session> closed) {
    Scores scores = new Scores();
    Map<String, Grown> lots = new HashMap<>();
    Map<String, UnripeFruits> unripe = new HashMap<>();
    for (List<Grown> own : varieties) {
      for (Grown grown : own) {
        if (speaks(grown)) {
          String code = grown.lot().code();
          lots.put(code, grown);
          unripe.put(code, UnripeFruits.of(grown.lot()));
        }
      }
    }
    lots.forEach((code, grown) -> scores.kitchen(grown, Objects.requireNonNull(unripe.get(code))));
    closed.forEach(session -> scores.session(session, lots, unripe));
    return List.copyOf(scores.all);
  }

  private static boolean speaks(Grown grown) {
    return SetApart.of(grown).stream()
        .allMatch(why -> why == SetApart.UNRIPE || why == SetApart.EARLY_VINES);
  }

  private static boolean isUnripe(Grown grown) {
    return !SetApart.of(grown).isEmpty();
  }

  private void kitchen(Grown grown, UnripeFruits unripe) {
    for (KitchenTasted taste : grown.lot().tastes()) {
      if (taste.liking() != null && grown.isCuredBy(taste.at())) {
        all.add(
            new TasteScore(
                grown.crop().key(),
                grown.lot().variety(),
                grown.season(),
                grown.lot().code(),
                grown.lot().picked().nameOf(taste),
                KITCHEN,
                "",
                0,
                Manner.KITCHEN,
                isUnripe(grown) || unripe.isOf(taste),
                taste.liking()));
      }
    }
  }

  private void session(Session session, Map<String, Grown> lots, Map<String, UnripeFruits> unripe) {
    Map<Answer, Integer> likings = new LinkedHashMap<>();
    for (Scored scored : session.scored()) {
      if (scored.attribute() == Attribute.LIKING) {
        likings.put(new Answer(scored.panelist(), scored.code()), scored.value());
      }
    }
    for (Sheet sheet : session.plan().sheets()) {
      for (Cup cup : sheet.cups()) {
        Integer value = likings.get(new Answer(sheet.panelist(), cup.code()));
        Served sample = session.sample(cup.sample()).orElse(null);
        Grown grown = sample == null ? null : lots.get(sample.lot());
        if (value != null
            && sample != null
            && grown != null
            && grown.isCuredBy(session.planned().at())
            && !session.fruitsOf(sample.name()).isEmpty()) {
          TreeSet<String> fruits = fruits(session, sample, grown);
          UnripeFruits seen = Objects.requireNonNull(unripe.get(sample.lot()));
          all.add(
              new TasteScore(
                  grown.crop().key(),
                  grown.lot().variety(),
                  grown.season(),
                  sample.lot(),
                  String.join(TasteScore.AND, fruits),
                  sheet.panelist(),
                  session.name(),
                  cup.flight(),
                  session.planned().blinding() == Blinding.OPEN ? Manner.OPEN : Manner.BLIND,
                  isUnripe(grown) || seen.isIn(fruits),
                  value));
        }
      }
    }
  }

  /** Returns the fruits that were cooked for a sample, under the names by which they count. */
  private static TreeSet<String> fruits(Session session, Served sample, Grown grown) {
    TreeSet<String> fruits = new TreeSet<>();
    session
        .fruitsOf(sample.name())
        .forEach(fruit -> fruits.add(grown.lot().picked().nameOf(fruit)));
    return fruits;
  }
}
