package rindward.controller.ledger;

import java.time.Instant;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import rindward.controller.crop.Crop;
import rindward.controller.lot.Lot;

/**
 * How old a lot was whenever a fruit left it: what its variety teaches of how long it keeps.
 *
 * @param byMillis life spent by then, in milliseconds at the reference temperature of its type;
 *     moments at which it did not yet keep are left out
 */
public record Ages(Map<Long, Long> byMillis) {
  private static final long DAY_MILLIS = 86_400_000;

  public Ages {
    byMillis = Map.copyOf(byMillis);
  }

  /** Returns whole days of life spent by such a moment; 0 if it did not yet keep. */
  public int daysAt(Instant moment) {
    return (int) (byMillis.getOrDefault(moment.toEpochMilli(), 0L) / DAY_MILLIS);
  }

  /** Counts the life of one lot, and looks at it in passing. Not thread-safe. */
  static final class Counting {
    private final AgeCounter age;
    private final NavigableSet<Long> moments = new TreeSet<>();
    private final Map<Long, Long> byMillis = new TreeMap<>();
    private final long holdMillis;

    Counting(Crop crop, Lot lot, long holdMillis) {
      this.age = new AgeCounter(crop.keeping());
      this.holdMillis = holdMillis;
      lot.culls().forEach(cull -> moments.add(cull.at().toEpochMilli()));
      lot.uses().forEach(use -> moments.add(use.at().toEpochMilli()));
      lot.missed().forEach(miss -> moments.add(miss.at().toEpochMilli()));
    }

    /** Counts the part of a stretch in which the lot kept. */
    void count(Exposure stretch, long keepsFrom) {
      long from = Math.max(keepsFrom, stretch.fromMillis());
      if (from >= stretch.toMillis()) {
        return;
      }
      for (long moment : moments.subSet(from, false, stretch.toMillis(), true)) {
        LotExposure.count(stretch, from, moment, holdMillis, age);
        byMillis.put(moment, age.spentMillis());
        from = moment;
      }
      LotExposure.count(stretch, from, stretch.toMillis(), holdMillis, age);
    }

    long spentMillis() {
      return age.spentMillis();
    }

    Ages ages() {
      return new Ages(byMillis);
    }
  }
}
