package rindward.controller.judge;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rindward.controller.journal.Attested;
import rindward.controller.journal.Harvested;
import rindward.controller.lot.Lot;
import rindward.controller.lot.Stay;

/**
 * All of what people say of a lot on which it depends what the air has done to it: while this is
 * the same, a sum that was made stays right.
 *
 * @param left when fruits left it, each a moment at which its age is looked at
 */
record LifeStory(
    Harvested harvest,
    List<Stay> stays,
    Optional<Attested> attested,
    Optional<Integer> fruitGrams,
    Optional<Instant> emptied,
    List<Instant> left) {

  static LifeStory of(Lot lot) {
    return new LifeStory(
        lot.harvest(),
        lot.stays(),
        lot.attested(),
        lot.fruitGrams(),
        lot.emptied(),
        Stream.of(
                lot.culls().stream().map(cull -> cull.at()),
                lot.uses().stream().map(use -> use.at()),
                lot.missed().stream().map(miss -> miss.at()))
            .flatMap(moments -> moments)
            .toList());
  }
}
