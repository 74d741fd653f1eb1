package rindward.controller.lot;

import java.util.List;
import java.util.Optional;
import rindward.controller.crop.CropGuide;
import rindward.controller.journal.Corrected;
import rindward.controller.journal.Entry;
import rindward.controller.journal.OfLot;
import rindward.controller.journal.Recorded;
import rindward.controller.journal.VarietyDecided;

/**
 * Which of what was said has nothing more to say to the rooms: a lot whose last fruit is gone and
 * in which nothing harmful was found, a plan that nothing has come of yet, a word on a variety.
 * Whoever runs the rooms need not hold it in memory; one more word about it, and it is looked at
 * again.
 */
public final class Finished {
  private Finished() {}

  /**
   * Tells whether a subject is over.
   *
   * @param about everything that was said of it
   * @param lot the lot that it tells; empty if it tells none
   */
  public static boolean isOver(List<Recorded> about, Optional<Lot> lot, CropGuide crops) {
    return about.stream().allMatch(recorded -> isOfLots(recorded.entry()))
        && lot.filter(told -> !isOver(told, crops)).isEmpty();
  }

  private static boolean isOver(Lot lot, CropGuide crops) {
    boolean isHarmless =
        lot.harms().isEmpty()
            || crops.crop(lot.crop()).filter(crop -> Stop.of(lot, crop).isEmpty()).isPresent();
    return lot.fruits().sound() <= 0 && lot.unread().isEmpty() && isHarmless;
  }

  private static boolean isOfLots(Entry entry) {
    return entry instanceof OfLot
        || entry instanceof VarietyDecided
        || (entry instanceof Corrected corrected && isOfLots(corrected.instead()));
  }
}
