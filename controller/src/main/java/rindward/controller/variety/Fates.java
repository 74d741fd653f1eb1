package rindward.controller.variety;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.ToIntFunction;
import rindward.controller.journal.Cause;
import rindward.controller.keeping.Ending;
import rindward.controller.keeping.Fate;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Missed;

/** What became of every fruit of a lot, by days since harvest. */
final class Fates {
  private Fates() {}

  static List<Fate> of(Grown grown, Instant now) {
    return of(grown, grown::day, grown.day(now));
  }

  /** The same by days of life, as the guide counts them. */
  static List<Fate> byLife(Grown grown) {
    return of(grown, grown.lived().ages()::daysAt, grown.age());
  }

  private static List<Fate> of(Grown grown, ToIntFunction<Instant> day, int today) {
    List<Fate> fates = new ArrayList<>();
    Lot lot = grown.lot();
    lot.culls()
        .forEach(c -> fates.add(new Fate(day.applyAsInt(c.at()), c.count(), ending(c.cause()))));
    lot.uses()
        .forEach(u -> fates.add(new Fate(day.applyAsInt(u.at()), u.count(), Ending.USED_SOUND)));
    missed(lot.missed())
        .forEach(m -> fates.add(new Fate(day.applyAsInt(m.at()), m.fruits(), Ending.UNACCOUNTED)));
    if (lot.fruits().sound() > 0) {
      fates.add(new Fate(today, lot.fruits().sound(), Ending.STILL_SOUND));
    }
    return fates;
  }

  private static Ending ending(Cause cause) {
    return switch (cause) {
      case FROZEN, WOUNDED, ANIMALS -> Ending.ACCIDENT;
      case ROT, SOFT, MOULD, SPROUTED, SHRIVELLED, EATEN_FAILING, OTHER -> Ending.LOST;
    };
  }

  /** Fruits that a later count found again were never missing. */
  private static List<Missed> missed(List<Missed> recounts) {
    Deque<Missed> missing = new ArrayDeque<>();
    for (Missed recount : recounts) {
      int found = -recount.fruits();
      while (found > 0 && !missing.isEmpty()) {
        Missed last = missing.removeLast();
        if (last.fruits() > found) {
          missing.addLast(new Missed(last.fruits() - found, last.at()));
        }
        found -= last.fruits();
      }
      if (recount.fruits() > 0) {
        missing.addLast(recount);
      }
    }
    return List.copyOf(missing);
  }
}
