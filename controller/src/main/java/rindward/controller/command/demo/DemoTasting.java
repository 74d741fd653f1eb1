package rindward.controller.command.demo;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.Preparation;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Seeds;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.Sheet;

/** The demo's tasting: five lots, six invented tasters, planned, cooked, scored and closed. */
final class DemoTasting {
  private static final String NAME = "early-winter";
  private static final List<String> LOTS = List.of("K1", "B1", "C1", "H1", "D1");
  private static final List<String> TASTERS =
      List.of("Wren", "Ash", "Rowan", "Linden", "Hazel", "Alder");

  /** Liking by taster, in the order of the lots; the hidden second cup of K1 last. */
  private static final int[][] LIKING = {
    {8, 7, 7, 6, 4, 8},
    {9, 7, 6, 5, 4, 8},
    {8, 6, 8, 6, 5, 8},
    {8, 8, 7, 6, 3, 7},
    {7, 6, 7, 5, 4, 8},
    {9, 7, 6, 7, 5, 5}
  };

  private static final int[] SWEETNESS = {4, 4, 3, 2, 3, 4};
  private static final int[] MOISTNESS = {1, 3, 2, 3, 4, 1};
  private static final List<Use> BEST_USE =
      List.of(Use.ROASTING, Use.SOUP, Use.PIE, Use.PIE, Use.BAKING, Use.ROASTING);

  private final Instant at;

  DemoTasting(Instant at) {
    this.at = at;
  }

  /** Returns everything that was said of it, in order. */
  List<Tasting> entries() {
    List<Tasting> entries = new ArrayList<>();
    SessionPlanned planned =
        new SessionPlanned(
            NAME,
            LOTS.stream().map(lot -> new Served(lot, lot, List.of("1"))).toList(),
            TASTERS,
            null,
            "K1",
            "a slice of apple",
            6,
            Blinding.FULL,
            new Preparation("baked", 190, "3 cm cubes", "a fork goes in", 50, "the middle"),
            20_251_201L,
            at);
    entries.add(planned);
    for (String lot : LOTS) {
      entries.add(
          new SampleCooked(NAME, lot, lot, "1", null, CutFruit.of(Seeds.FULL), 40, "soft", at));
    }
    SessionPlan plan = SessionPlan.draw(planned.request(), planned.seed());
    for (int taster = 0; taster < TASTERS.size(); taster++) {
      score(entries, plan.sheets().get(taster), LIKING[taster]);
    }
    entries.add(new SessionClosed(NAME, false, at));
    return entries;
  }

  private void score(List<Tasting> entries, Sheet sheet, int[] liking) {
    for (Cup cup : sheet.cups()) {
      int what = cup.isDuplicate() ? LOTS.size() : LOTS.indexOf(cup.sample());
      entries.add(scored(sheet, cup, Attribute.LIKING, liking[what]));
      entries.add(scored(sheet, cup, Attribute.SWEETNESS, SWEETNESS[what]));
      entries.add(scored(sheet, cup, Attribute.MOISTNESS, MOISTNESS[what]));
      if (liking[what] >= 7) {
        entries.add(
            new UsesTicked(NAME, sheet.panelist(), cup.code(), List.of(BEST_USE.get(what)), at));
      }
    }
  }

  private Scored scored(Sheet sheet, Cup cup, Attribute attribute, int value) {
    return new Scored(NAME, sheet.panelist(), cup.code(), attribute, value, at);
  }
}
