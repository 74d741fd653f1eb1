package rindward.controller.store.current;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rindward.controller.crop.Crop;
import rindward.controller.crop.CropGuide;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;

/**
 * A subject of the journal that is over, and what is still asked of it.
 *
 * @param crop key of a lot's type; empty for what is no lot
 * @param variety the grower's name for it; may be empty
 * @param places where a lot lay
 */
record FinishedSubject(String subject, String crop, String variety, Set<String> places) {

  /**
   * @param lot the lot that the subject tells; empty if it tells none
   */
  static FinishedSubject of(String subject, Optional<Lot> lot, CropGuide crops) {
    Set<String> places = new TreeSet<>();
    lot.ifPresent(told -> told.stays().stream().map(Stay::place).forEach(places::add));
    return new FinishedSubject(
        subject,
        lot.flatMap(told -> crops.crop(told.crop())).map(Crop::key).orElse(""),
        lot.map(Lot::variety).orElse(""),
        places);
  }
}
