package rindward.controller.lot;

import java.util.Objects;
import java.util.Optional;
import rindward.controller.journal.Weighed;

/** What is taken all the same, but told. */
public final class Warning {
  private Warning() {}

  /**
   * Returns a sentence if fruits weigh more than before, which fruits do not do but scales do.
   *
   * @param lot as it stood before
   */
  public static Optional<String> of(Weighed weighed, Lot lot) {
    return lot.weighings().stream()
        .filter(before -> !before.at().isAfter(weighed.at()))
        .filter(before -> Objects.equals(before.fruit(), weighed.fruit()))
        .reduce((first, second) -> second)
        .filter(before -> heavier(weighed, before))
        .map(
            before ->
                "This is heavier than last time ("
                    + before.netGrams() / before.count()
                    + " g a fruit on "
                    + before.at()
                    + "); it is kept, but look whether the scale or the tare was another.");
  }

  private static boolean heavier(Weighed now, Weighed before) {
    return (long) now.netGrams() * before.count() > (long) before.netGrams() * now.count();
  }
}
