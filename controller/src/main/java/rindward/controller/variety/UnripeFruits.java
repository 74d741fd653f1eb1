package rindward.controller.variety;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Seeds;
import rindward.controller.lot.Lot;

/**
 * Which fruits of a lot were seen to be unripe when they were cut: how these tasted says nothing of
 * their variety, and nothing of the lot's other fruits.
 */
final class UnripeFruits {
  private final Set<String> names;

  private UnripeFruits(Set<String> names) {
    this.names = names;
  }

  /**
   * Gathers what was seen of a lot's fruits.
   *
   * @param tasted what sessions gave the lot, with what their cooks saw
   */
  static UnripeFruits of(Lot lot, Collection<Tasted> tasted) {
    Set<String> names = new HashSet<>();
    for (KitchenTasted taste : lot.tastes()) {
      if (taste.fruit() != null && taste.cut().seeds() == Seeds.FLAT) {
        names.add(taste.fruit());
      }
    }
    for (Tasted each : tasted) {
      for (SampleCooked cooked : each.session().cooked()) {
        if (cooked.lot().equals(lot.code()) && cooked.cut().seeds() == Seeds.FLAT) {
          names.add(cooked.fruit());
        }
      }
    }
    return new UnripeFruits(Set.copyOf(names));
  }

  /** Tells whether a taste was of such a fruit. */
  boolean isOf(KitchenTasted taste) {
    return taste.cut().seeds() == Seeds.FLAT
        || taste.fruit() != null && names.contains(taste.fruit());
  }

  /** Tells whether some of these fruits is such a one. */
  boolean isIn(Collection<String> fruits) {
    return fruits.stream().anyMatch(names::contains);
  }

  /** Tells whether a cup held some of such a fruit. */
  boolean isIn(Tasted tasted) {
    return isIn(tasted.sample().fruits());
  }
}
