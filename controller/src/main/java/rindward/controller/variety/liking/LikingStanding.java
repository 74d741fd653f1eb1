package rindward.controller.variety.liking;

import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import rindward.controller.mixed.Mixture;

/**
 * How a variety is liked.
 *
 * @param isGrownOnce whether all rests on one lot: what is said is then of this variety as it was
 *     grown here once
 * @param level on the scale of the question, as a panel of the grower's people would score it
 * @param beside what it is compared with; empty if nothing of its type was scored beside it
 * @param seasons the level of each season by itself
 */
public record LikingStanding(
    boolean isGrownOnce,
    Mixture level,
    Optional<Beside> beside,
    SortedMap<Integer, Mixture> seasons,
    Basis basis) {
  public LikingStanding {
    seasons = Collections.unmodifiableSortedMap(new TreeMap<>(seasons));
  }
}
