package rindward.controller.variety;

import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.Seeds;
import rindward.controller.lot.Fruit;
import rindward.controller.lot.Lot;
import rindward.controller.lot.PickedFruits;

/**
 * Which fruits of a lot were seen to be unripe when they were cut: how these tasted says nothing of
 * their variety, and nothing of the lot's other fruits.
 */
final class UnripeFruits {
  private final PickedFruits picked;
  private final Set<String> names;

  private UnripeFruits(PickedFruits picked, Set<String> names) {
    this.picked = picked;
    this.names = names;
  }

  /** Gathers what was seen of a lot's fruits, in kitchens and by the cooks of sessions. */
  static UnripeFruits of(Lot lot) {
    return new UnripeFruits(
        lot.picked(),
        lot.picked().all().stream()
            .filter(fruit -> fruit.seeds().filter(Seeds.FLAT::equals).isPresent())
            .map(Fruit::name)
            .collect(Collectors.toUnmodifiableSet()));
  }

  /** Tells whether a taste was of such a fruit. */
  boolean isOf(KitchenTasted taste) {
    return names.contains(picked.nameOf(taste));
  }

  /** Tells whether some of these fruits is such a one. */
  boolean isIn(Collection<String> fruits) {
    return fruits.stream().map(picked::nameOf).anyMatch(names::contains);
  }

  /** Tells whether a cup held some of such a fruit. */
  boolean isIn(Tasted tasted) {
    return isIn(tasted.fruits());
  }
}
