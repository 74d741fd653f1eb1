package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rindward.controller.journal.Grade;
import rindward.controller.keeping.Ending;
import rindward.controller.keeping.Fate;
import rindward.controller.mixed.ShareAmongGroups;
import rindward.controller.mixed.ShareAmongGroups.Seen;
import rindward.controller.readiness.RipeShare;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;

/** Whether a variety ripens and keeps as is needed: by shares of its lots, which differ by luck. */
final class NeedsMet {
  /** A whole lot that is told ripe or unripe says no more than so many fruits looked into. */
  private static final int LOT_COUNTS_AS = 8;

  private static final double LOW = 0.1;
  private static final double HIGH = 0.9;

  private NeedsMet() {}

  static Prospect ripens(List<Grown> lots, Need need) {
    if (need.ripeHundredths() == 0) {
      return Prospect.notNeeded("Its type is not told ripe by fruit set.");
    }
    List<Seen> seen = new ArrayList<>();
    for (Grown grown : lots) {
      Ripeness ripeness = Ripeness.of(grown.lot(), grown.crop());
      int most = Math.min(LOT_COUNTS_AS, Math.max(1, grown.lot().count()));
      boolean isNoted = grown.lot().grade() != null || !grown.lot().ripeness().isEmpty();
      if (ripeness.share().isPresent()) {
        RipeShare share = ripeness.share().get();
        seen.add(new Seen(share.ripe(), share.cut()));
      } else if (isNoted && ripeness.level() == Level.RIPE) {
        seen.add(new Seen(most, most));
      } else if (ripeness.level() == Level.NEVER || grown.lot().grade() == Grade.GREEN) {
        seen.add(new Seen(0, most));
      }
    }
    return answer(
        seen, need.ripeHundredths(), "ripe when picked", "Nobody noted whether it ripened.");
  }

  static Prospect keeps(List<Grown> lots, Need need, Instant now) {
    if (!need.isToKeep()) {
      return Prospect.notNeeded("Its type is eaten as it comes and need not keep.");
    }
    List<Seen> seen = new ArrayList<>();
    for (Grown grown : lots) {
      if (!SetApart.keepAsTheyShould(SetApart.of(grown))) {
        continue;
      }
      int days = need.daysToKeep(grown);
      int lost = 0;
      int sound = 0;
      int open = 0;
      for (Fate fate : Fates.of(grown, now)) {
        if (fate.ending() == Ending.LOST && fate.day() <= days) {
          lost += fate.fruits();
        } else if (fate.day() >= days) {
          sound += fate.fruits();
        } else if (fate.ending() == Ending.STILL_SOUND) {
          open += fate.fruits();
        }
      }
      // Before its day a lot counts only where it has failed already, should all the rest keep.
      boolean hasFailed = 100 * (sound + open) < need.keepHundredths() * (sound + open + lost);
      if (open == 0 || hasFailed) {
        seen.add(new Seen(sound + open, sound + open + lost));
      }
    }
    return answer(
        seen,
        need.keepHundredths(),
        "sound " + need.keepWords(),
        "Nothing of it was followed " + need.keepWords() + " yet.");
  }

  private static Prospect answer(List<Seen> all, int hundredths, String what, String nothing) {
    List<Seen> seen = all.stream().filter(s -> s.of() > 0).toList();
    if (seen.isEmpty()) {
      return Prospect.unknown(nothing);
    }
    ShareAmongGroups share = new ShareAmongGroups(seen);
    double chance = share.chanceAtLeast(hundredths / 100.0);
    return Prospect.of(
        chance,
        String.format(
            Locale.ROOT,
            "That %s are %s has a chance of %s (%d of %d in %s were; the share lies between %.0f"
                + " and %.0f in 100, with a chance of 80 in 100).",
            hundredths == 75 ? "three in four" : hundredths + " in 100",
            what,
            Prospect.inHundred(chance),
            seen.stream().mapToInt(Seen::with).sum(),
            seen.stream().mapToInt(Seen::of).sum(),
            seen.size() == 1 ? "one lot" : seen.size() + " lots",
            100 * share.quantile(LOW),
            100 * share.quantile(HIGH)));
  }
}
